package org.adumbrate.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class AxisWeightsTest {
    private static final float[] ROW = {10, 20, 40, 80};

    private static float[] resized(int target) {
        float[] out = new float[target];
        AxisWeights.of(4, target, 4.0 / target, 0).mix(ROW, 0, out, 1);
        return out;
    }

    /** Closed form, worked in double precision: row 10 20 40 80 doubled by the Catmull-Rom kernel, edges repeated. */
    @Test
    void enlargingByTwoIsCatmullRomAtTheQuarters() {
        assertThat(resized(8))
                .containsExactly(
                        new float[] {
                            9.296875f, 11.5625f, 16.5625f, 23.828125f, 33.359375f, 49.53125f, 72.34375f, 82.8125f
                        },
                        within(1e-5f));
    }

    /** INTER_AREA of OpenCV 4.6: 4 to 3 and 4 to 2. */
    @Test
    void reducingIsByArea() {
        assertThat(resized(3)).containsExactly(new float[] {12.5f, 30, 70}, within(1e-5f));
        assertThat(resized(2)).containsExactly(new float[] {15, 60}, within(1e-5f));
    }

    @Test
    void theSameSizeIsTheSameRow() {
        AxisWeights weights = AxisWeights.of(4, 4, 1, 0);
        assertThat(weights.taps()).isEqualTo(1);
        assertThat(resized(4)).containsExactly(ROW);
    }

    @Test
    void aReversedAxisReversesTheRow() {
        float[] out = new float[4];
        AxisWeights.of(4, 4, -1, 4).mix(ROW, 0, out, 1);
        assertThat(out).containsExactly(80, 40, 20, 10);
    }

    @Test
    void coverageFallsOffWhereTheSourceEnds() {
        AxisWeights weights = AxisWeights.of(4, 8, 1, -1.25);
        assertThat(weights.coverage(0)).isZero();
        assertThat(weights.coverage(1)).isCloseTo(0.75f, within(1e-6f));
        assertThat(weights.coverage(2)).isEqualTo(1);
        assertThat(weights.coverage(5)).isCloseTo(0.25f, within(1e-6f));
        assertThat(weights.coverage(6)).isZero();
    }

    @Property(tries = 300, seed = "1")
    void weightsAddUpToOneAndStayInside(
            @ForAll @IntRange(min = 1, max = 60) int source,
            @ForAll @IntRange(min = 1, max = 90) int target,
            @ForAll @DoubleRange(min = 0.05, max = 9) double scale,
            @ForAll @DoubleRange(min = -40, max = 40) double origin) {
        AxisWeights weights = AxisWeights.of(source, target, scale, origin);
        for (int k = 0; k < target; k++) {
            float sum = 0;
            for (int j = 0; j < weights.taps(); j++) {
                sum += weights.weight(k, j);
            }
            assertThat(sum).isCloseTo(1, within(1e-5f));
            assertThat(weights.first(k)).isBetween(0, source - weights.taps());
        }
    }

    /** A cubic that passes through straight lines keeps a ramp where its samples are inside. */
    @Property(tries = 200, seed = "1")
    void aRampStaysARamp(
            @ForAll @DoubleRange(min = 0.1, max = 0.99) double scale,
            @ForAll @DoubleRange(min = 3, max = 20) double origin) {
        float[] ramp = new float[60];
        for (int k = 0; k < ramp.length; k++) {
            ramp[k] = k + 0.5f;
        }
        float[] out = new float[30];
        AxisWeights.of(60, 30, scale, origin).mix(ramp, 0, out, 1);
        for (int k = 0; k < 30; k++) {
            assertThat((double) out[k]).isCloseTo(origin + scale * (k + 0.5), within(1e-4));
        }
    }
}
