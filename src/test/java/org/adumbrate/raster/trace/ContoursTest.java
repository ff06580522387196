package org.adumbrate.raster.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ContoursTest {
    /** A ramp at a slant: values are distances from the line 0.8 x + 0.6 y = 20. */
    private static float[] ramp(int size) {
        float[] values = new float[size * size];
        for (int k = 0; k < values.length; k++) {
            int column = k % size;
            int row = k / size;
            values[k] = (float) (0.8 * (column + 0.5) + 0.6 * (row + 0.5) - 20);
        }
        return values;
    }

    @Test
    void aLineIsFoundBetweenThePixelsFromRimToRim() {
        List<double[]> lines = Contours.of(ramp(40), 40, 40, 0);
        assertThat(lines).hasSize(1);
        for (int k = 0; k < lines.get(0).length; k += 2) {
            assertThat(0.8 * lines.get(0)[k] + 0.6 * lines.get(0)[k + 1]).isCloseTo(20, within(1e-4));
        }
        StraightStretches.Stretch one =
                StraightStretches.of(lines.get(0), 0.5, 10, 2).get(0);
        assertThat(one.rms()).isLessThan(1e-4);
        assertThat(Math.hypot(one.x1() - one.x0(), one.y1() - one.y0())).isBetween(25.0, 35.0);
    }

    @Test
    void aDiscIsClosedAndASquareHasFourStretches() {
        int size = 60;
        float[] square = new float[size * size];
        for (int k = 0; k < square.length; k++) {
            square[k] = k % size >= 10 && k % size < 50 && k / size >= 10 && k / size < 50 ? 1 : 0;
        }
        List<double[]> lines = Contours.of(square, size, size, 0.5);
        assertThat(lines).hasSize(1);
        double[] ring = lines.get(0);
        assertThat(ring[0]).isEqualTo(ring[ring.length - 2]);
        assertThat(ring[1]).isEqualTo(ring[ring.length - 1]);
        assertThat(StraightStretches.of(ring, 0.7, 12, 2)).hasSizeBetween(4, 5).allSatisfy(one -> {
            double x = (one.x0() + one.x1()) / 2;
            double y = (one.y0() + one.y1()) / 2;
            assertThat(Math.min(Math.abs(Math.abs(x - 30) - 20), Math.abs(Math.abs(y - 30) - 20)))
                    .isLessThan(0.1);
        });
    }

    @Test
    void aPlainPictureHasNoLines() {
        assertThat(Contours.of(new float[400], 20, 20, 0.5)).isEmpty();
    }
}
