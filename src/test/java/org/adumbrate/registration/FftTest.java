package org.adumbrate.registration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class FftTest {
    @Test
    void agreesWithTheSumThatDefinesIt() {
        int side = 8;
        float[] re = random(side, 1);
        float[] im = random(side, 2);
        float[] a = re.clone();
        float[] b = im.clone();
        new Fft(side).forward(a, b);
        for (int v = 0; v < side; v++) {
            for (int u = 0; u < side; u++) {
                double sumRe = 0;
                double sumIm = 0;
                for (int k = 0; k < side * side; k++) {
                    double angle = -2 * Math.PI * (u * (k % side) + v * (k / side)) / side;
                    sumRe += re[k] * Math.cos(angle) - im[k] * Math.sin(angle);
                    sumIm += re[k] * Math.sin(angle) + im[k] * Math.cos(angle);
                }
                assertThat((double) a[v * side + u]).isCloseTo(sumRe, within(1e-4));
                assertThat((double) b[v * side + u]).isCloseTo(sumIm, within(1e-4));
            }
        }
    }

    @Test
    void theInverseGivesBackTheValuesTimesTheirNumber() {
        int side = 64;
        float[] re = random(side, 3);
        float[] im = random(side, 4);
        float[] a = re.clone();
        float[] b = im.clone();
        Fft fft = new Fft(side);
        fft.forward(a, b);
        fft.inverse(a, b);
        for (int k = 0; k < side * side; k++) {
            assertThat(a[k] / (side * side)).isCloseTo(re[k], within(1e-5f));
            assertThat(b[k] / (side * side)).isCloseTo(im[k], within(1e-5f));
        }
    }

    /**
     * Kuglin and Hines's translation by correlation, on an image of 24 bells whose values two independent programs agree on:
     * f(64, 64) = .1002445, f(35, 53) = .4515932, sum 2384.390.
     */
    @Test
    void correlationFindsATranslation() {
        assertThat(bells(64, 64)).isCloseTo(0.100244498620, within(1e-9));
        assertThat(bells(35, 53)).isCloseTo(0.451593178993, within(1e-9));
        int side = 128;
        float[] f = new float[side * side];
        float[] g = new float[side * side];
        double sum = 0;
        for (int k = 0; k < side * side; k++) {
            f[k] = (float) bells(k % side, k / side);
            g[k] = (float) bells(k % side - 5, k / side + 3);
            sum += bells(k % side, k / side);
        }
        assertThat(sum).isCloseTo(2384.390025, within(1e-6));
        assertThat(peak(f, g, side)).containsExactly(5, side - 3);
    }

    @Test
    void onlyPowersOfTwoAreTaken() {
        assertThatThrownBy(() -> new Fft(48)).isInstanceOf(IllegalArgumentException.class);
    }

    private static int[] peak(float[] f, float[] g, int side) {
        Fft fft = new Fft(side);
        float[] fi = new float[side * side];
        float[] gi = new float[side * side];
        fft.forward(f, fi);
        fft.forward(g, gi);
        float[] re = new float[side * side];
        float[] im = new float[side * side];
        for (int k = 0; k < side * side; k++) {
            re[k] = g[k] * f[k] + gi[k] * fi[k];
            im[k] = gi[k] * f[k] - g[k] * fi[k];
        }
        fft.inverse(re, im);
        int best = 0;
        for (int k = 0; k < side * side; k++) {
            best = re[k] > re[best] ? k : best;
        }
        return new int[] {best % side, best / side};
    }

    private static double bells(int x, int y) {
        double sum = 0.1;
        for (int k = 0; k < 24; k++) {
            double dx = x - ((37 * k + 11) % 79 + 24);
            double dy = y - ((61 * k + 29) % 79 + 24);
            double s = 1.8 + 0.6 * (k % 5);
            sum += (0.25 + 0.1 * (k % 7)) * Math.exp(-(dx * dx + dy * dy) / (2 * s * s));
        }
        return sum;
    }

    private static float[] random(int side, long seed) {
        Random random = new Random(seed);
        float[] values = new float[side * side];
        for (int k = 0; k < values.length; k++) {
            values[k] = random.nextFloat() - 0.5f;
        }
        return values;
    }
}
