package org.adumbrate.underlay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TransmittanceTest {
    private static final float FULL = 0.235f;
    private static final float SLACK = 0.02f;

    private static float shaded(double building, double figure) {
        float[] light = {(float) building};
        Transmittance.shade(light, 1, new float[] {(float) figure}, 1, FULL, SLACK);
        return light[0];
    }

    @Test
    void noiseOfFullShadowStaysAsItIs() {
        for (double building : new double[] {0.20, 0.235, 0.24, 0.254}) {
            assertThat(shaded(building, FULL)).isEqualTo((float) building);
        }
    }

    @Test
    void litPlacesTakeTheDarker() {
        assertThat(shaded(1, FULL)).isEqualTo(FULL);
        assertThat(shaded(1, 0.6)).isEqualTo(0.6f);
        assertThat(shaded(0.5, 0.8)).isEqualTo(0.5f);
    }

    @Test
    void aGreyPassShadesEveryChannel() {
        float[] light = {1, 0.9f, 0.8f};
        Transmittance.shade(light, 3, new float[] {0.5f}, 1, FULL, SLACK);
        assertThat(light).containsExactly(0.5f, 0.5f, 0.5f);
    }

    @Property(seed = "1")
    void neverLightensAndNeverJumps(
            @ForAll @DoubleRange(min = 0, max = 1) double building,
            @ForAll @DoubleRange(min = 0.24, max = 1) double figure) {
        float here = shaded(building, figure);
        assertThat(here).isLessThanOrEqualTo((float) building);
        assertThat(here).isGreaterThanOrEqualTo((float) Math.min(building, figure) - 1e-6f);
        assertThat(shaded(Math.min(1, building + 1e-4), figure)).isCloseTo(here, within(2e-4f));
    }
}
