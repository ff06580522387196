package org.adumbrate.linework.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.adumbrate.geometry.VectorPath;

/** Compares paths step by step, their coordinates to within a tolerance. */
public final class PathAssertions {
    private PathAssertions() {}

    /** Fails unless a path has the steps of a text such as {@code M 1 2 L 3 4 Z}, give or take so many mm. */
    public static void assertPath(VectorPath<?> path, String expected, double tolerance) {
        assertThat(path.toString().replaceAll("[^MLCZ]", "")).isEqualTo(expected.replaceAll("[^MLCZ]", ""));
        assertThat(coordinates(path.toString())).containsExactly(coordinates(expected), within(tolerance));
    }

    private static double[] coordinates(String text) {
        return Arrays.stream(text.split("[MLCZ ]+", -1))
                .filter(word -> !word.isEmpty())
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
