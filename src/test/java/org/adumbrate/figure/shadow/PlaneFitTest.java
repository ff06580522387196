package org.adumbrate.figure.shadow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.function.DoubleBinaryOperator;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.figure.depth.DepthScale;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.raster.StoredNumbers;
import org.junit.jupiter.api.Test;

class PlaneFitTest {
    private static final DepthScale SCALE = new DepthScale(10, 40);
    private static final int SIDE = 24;

    /** A depth pass of so many steps, 0 for floating point; the depth in metres of each pixel's middle. */
    static DepthMap map(int steps, DoubleBinaryOperator depth) {
        float[] values = new float[SIDE * SIDE];
        for (int k = 0; k < values.length; k++) {
            double value =
                    (depth.applyAsDouble(k % SIDE + 0.5, (k - k % SIDE) / (double) SIDE + 0.5) - SCALE.near()) / 30;
            values[k] = (float) (steps == 0 ? value : Math.round(value * steps) / (double) steps);
        }
        StoredNumbers numbers = new StoredNumbers(
                new PixelSize(SIDE, SIDE),
                values,
                steps == 0 ? 0 : 1.0 / steps,
                Affine.identity(Space.RASTER, Space.RASTER));
        return DepthMap.of(numbers, SCALE, Affine.identity(Space.RASTER, Space.SHEET));
    }

    private static PlaneFit fit(DepthMap map, int x, int y) {
        PlaneFit fit = new PlaneFit(map);
        fit.turnTo(x, y);
        return fit;
    }

    private static double floor(double u, double v) {
        return 1 / (0.03 + 1e-4 * u + 7e-4 * v);
    }

    @Test
    void findsAPlaneExactly() {
        PlaneFit fit = fit(map(0, PlaneFitTest::floor), 10, 12);
        assertThat(fit.across()).isCloseTo(1e-4, offset(1e-7));
        assertThat(fit.down()).isCloseTo(7e-4, offset(1e-7));
        assertThat(fit.inverse()).isCloseTo(0.03 + 1e-4 * 10.5 + 7e-4 * 12.5, offset(1e-7));
    }

    /** One step of 16 bits over 30 m is 0.46 mm: at 25 m a gradient from two pixels could be 7e-7 off, from nine less. */
    @Test
    void takesTheStepsOutOfAGradient() {
        DepthMap map = map(65535, PlaneFitTest::floor);
        for (int x = 6; x < 18; x++) {
            PlaneFit fit = fit(map, x, 12);
            assertThat(fit.across()).isCloseTo(1e-4, offset(2.5e-7));
            assertThat(fit.down()).isCloseTo(7e-4, offset(2.5e-7));
        }
    }

    @Test
    void looksToTheSideThatGoesOnWhereASurfaceEnds() {
        DepthMap map = map(65535, (u, v) -> u < 12 ? floor(u, v) : 14 + 0.01 * u);
        assertThat(fit(map, 11, 12).across()).isCloseTo(1e-4, offset(1e-6));
        assertThat(fit(map, 12, 12).across()).isCloseTo(-0.01 / (14.125 * 14.125), offset(2e-6));
    }

    /** A rail two pixels high before the background: its own two pixels tell its slope, not what lies behind. */
    @Test
    void keepsToAThinSurface() {
        DepthMap map = map(65535, (u, v) -> v > 10 && v < 12 ? 18 + 0.02 * u : 60);
        for (int y = 10; y < 12; y++) {
            assertThat(fit(map, 12, y).down()).isCloseTo(0, offset(1e-9));
            assertThat(fit(map, 12, y).across()).isCloseTo(-0.02 / (18.25 * 18.25), offset(1e-6));
        }
        DepthMap gap = map(65535, (u, v) -> u > 10 && u < 12 ? floor(u, v) : 14);
        assertThat(fit(gap, 10, 12).across()).isCloseTo(1e-4, offset(1e-6));
    }

    @Test
    void followsACurve() {
        DepthMap map = map(0, (u, v) -> 20 + 0.02 * (u - 12) * (u - 12));
        double depth = 20 + 0.02 * 4.5 * 4.5;
        assertThat(fit(map, 16, 12).across()).isCloseTo(-0.04 * 4.5 / (depth * depth), offset(1e-5));
    }
}
