package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;

/** Lines of 1.65 m at known distances, seen with a focal length of 260 mm. */
class DepthFitTest {
    private static final double FOCAL = 260;
    private static final double TALL = 1.65;

    /** What a line at a distance looks like, its ends off by so much. */
    private static HeightLine line(double distance, double off) {
        double height = FOCAL * TALL / distance + off;
        return new HeightLine(new SheetPoint(200, 230), new SheetPoint(200, 230 - height));
    }

    private static DepthReading level(double distance, double near, double far, double off) {
        return new DepthReading(line(distance, off), (distance - near) / (far - near));
    }

    @Test
    void twoLinesSettleTheRange() throws Refusal {
        FittedDepth depth = DepthFit.of(List.of(level(14, 4, 40, 0), level(22, 4, 40, 0)), FOCAL, TALL);
        assertThat(depth.nearM()).isCloseTo(4, within(1e-9));
        assertThat(depth.farM()).isCloseTo(40, within(1e-9));
        assertThat(depth.distrusted()).isEmpty();
    }

    @Test
    void aRangeFromTheEyeOnIsFound() throws Refusal {
        FittedDepth depth = DepthFit.of(List.of(level(14, 0, 65.535, 0), level(22, 0, 65.535, 0)), FOCAL, TALL);
        assertThat(depth.nearM()).isCloseTo(0, within(1e-9));
        assertThat(depth.farM()).isCloseTo(65.535, within(1e-9));
    }

    /** Ends drawn 0.1 mm off, a fifth of the lines hidden in part: distances come out within 1 percent, strays are named. */
    @Property(tries = 100, seed = "1")
    void roughAndHiddenLinesDoNotMatter(
            @ForAll long seed,
            @ForAll @DoubleRange(min = 0, max = 10) double near,
            @ForAll @DoubleRange(min = 40, max = 400) double far)
            throws Refusal {
        Random random = new Random(seed);
        List<DepthReading> readings = new ArrayList<>();
        for (int k = 0; k < 25; k++) {
            double distance = 13 + k;
            boolean isHidden = k % 5 == 3;
            readings.add(level(
                    distance, near, far, isHidden ? -0.4 * FOCAL * TALL / distance : 0.1 * random.nextGaussian()));
        }
        FittedDepth depth = DepthFit.of(readings, FOCAL, TALL);
        for (double distance : new double[] {13, 20, 37}) {
            double level = (distance - near) / (far - near);
            double found = depth.nearM() + level * (depth.farM() - depth.nearM());
            assertThat(found).isCloseTo(distance, within(0.02 * distance));
        }
        assertThat(depth.residualsMm()).hasSize(25);
        assertThat(depth.distrusted())
                .contains(readings.get(3), readings.get(8), readings.get(13), readings.get(18), readings.get(23));
    }

    @Test
    void oneDistanceIsNotEnough() {
        refused(List.of(level(14, 4, 40, 0)), "two at least");
        refused(List.of(level(14, 4, 40, 0), level(14, 4, 40, 0.1)), "two at least");
        refused(List.of(), "two at least");
    }

    @Test
    void aPassThatDarkensWithDistanceIsRefused() {
        refused(
                List.of(new DepthReading(line(14, 0), 0.7), new DepthReading(line(22, 0), 0.5)),
                "darker with distance");
    }

    /** As a depth buffer holds it: levels grow with the inverse of distance. */
    @Test
    void aPassWhoseLevelsDoNotGrowEvenlyIsRefused() {
        List<DepthReading> readings = new ArrayList<>();
        for (double distance = 10; distance < 60; distance += 2) {
            readings.add(new DepthReading(line(distance, 0), 1.1 * (1 - 4 / distance)));
        }
        refused(readings, "grow evenly with distance");
    }

    private static void refused(List<DepthReading> readings, String why) {
        assertThatThrownBy(() -> DepthFit.of(readings, FOCAL, TALL))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(why);
    }
}
