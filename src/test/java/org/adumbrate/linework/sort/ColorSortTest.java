package org.adumbrate.linework.sort;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.read.LineSheets;
import org.junit.jupiter.api.Test;

class ColorSortTest {
    /** The layers of the demo, as its exporter coloured them. */
    private static final Map<String, Srgb> DEMO = Map.of(
            "building", new Srgb(64, 64, 72),
            "ground", new Srgb(120, 84, 40),
            "furniture", new Srgb(0, 96, 168),
            "paving", new Srgb(176, 120, 0),
            "trees", new Srgb(0, 136, 56),
            "neighbour", new Srgb(150, 60, 160),
            "glass", new Srgb(0, 170, 190),
            "people-height", new Srgb(230, 0, 40),
            "section-cut", new Srgb(0, 0, 0));

    @Test
    void everyStrokeOfTheDemoIsSortedRightThoughItsColourIsOffByTwoLevels() throws InputFault {
        ColorSort<String> exact = ColorSort.by(DEMO);
        ColorSort<String> noisy = ColorSort.by(DEMO);
        Random random = new Random(5);
        for (String file : List.of("lines.pdf", "lines-trees.pdf", "lines-people-height.pdf")) {
            for (Stroke stroke :
                    LineSheets.read(Path.of("passes", "kiln-yard", file)).strokes()) {
                assertThat(exact.of(stroke.color())).isPresent();
                assertThat(noisy.of(shifted(stroke.color(), random))).isEqualTo(exact.of(stroke.color()));
            }
        }
    }

    private static Srgb shifted(Srgb color, Random random) {
        return new Srgb(shifted(color.red(), random), shifted(color.green(), random), shifted(color.blue(), random));
    }

    private static int shifted(int level, Random random) {
        return Math.max(0, Math.min(255, level + random.nextInt(5) - 2));
    }

    @Test
    void theNearestWithinFourLevelsCountsAndOfEquallyNearOnesTheFirst() {
        Map<String, Srgb> near = new LinkedHashMap<>();
        near.put("first", new Srgb(10, 10, 10));
        near.put("second", new Srgb(14, 10, 10));
        ColorSort<String> sort = ColorSort.by(near);
        assertThat(sort.of(new Srgb(13, 10, 10))).contains("second");
        assertThat(sort.of(new Srgb(12, 10, 10))).contains("first");
        assertThat(sort.of(new Srgb(10, 14, 6))).contains("first");
        assertThat(sort.of(new Srgb(10, 15, 10))).isEmpty();
        assertThat(sort.of(new Srgb(18, 10, 10))).contains("second");
    }

    @Test
    void shadesOfOneColourAreOneFamilyNamedByTheMostDrawn() {
        Srgb grey = new Srgb(64, 64, 72);
        Srgb shade = new Srgb(66, 62, 73);
        Srgb red = new Srgb(230, 0, 40);
        assertThat(ColorSort.families(List.of(
                        new ColorTally(grey, 5, 900), new ColorTally(red, 5, 500), new ColorTally(shade, 9, 1))))
                .containsExactly(Map.entry(grey, grey), Map.entry(red, red), Map.entry(shade, grey));
    }
}
