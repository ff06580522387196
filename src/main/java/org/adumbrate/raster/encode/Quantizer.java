package org.adumbrate.raster.encode;

import org.adumbrate.raster.SrgbCurve;

/**
 * Turns linear light into encoded sRGB samples.
 *
 * <p>Eight-bit samples may be dithered in order (Bayer, "An optimum method for two-level rendition of continuous-tone
 * pictures", ICC 1973) by less than one level: a value that is a level already, such as bare paper, stays exactly as it
 * is, and the mean over an 8 x 8 block is right to 1/128 of a level.
 */
final class Quantizer {
    private static final int STEPS = 8192;

    /**
     * Encoded value, in 8-bit levels, at even steps of linear light. Straight lines between them stay within 0.002 of a
     * level; the table is small enough for the nearest cache.
     */
    private static final float[] LEVELS = levels(STEPS, 255);

    /** The same for 16 bits, finer, made only when it is needed. */
    private static final class Sixteen {
        private static final int STEPS = 65536;
        private static final float[] LEVELS = levels(STEPS, 65535);
    }

    private static final float[] BAYER = bayer();
    private static final float HALF = 0.5f;

    private final boolean dithered;

    Quantizer(boolean dithered) {
        this.dithered = dithered;
    }

    private static float[] levels(int steps, int most) {
        float[] levels = new float[steps + 2];
        for (int k = 0; k <= steps; k++) {
            levels[k] = (float) (SrgbCurve.encode(k / (double) steps) * most);
        }
        levels[steps + 1] = levels[steps];
        return levels;
    }

    /** Thresholds (v + 1/2) / 64 of the 8 x 8 matrix: built by the recursion 4M, 4M+2; 4M+3, 4M+1. */
    private static float[] bayer() {
        int[] matrix = {0};
        for (int side = 1; side < 8; side *= 2) {
            int[] next = new int[4 * side * side];
            for (int y = 0; y < side; y++) {
                for (int x = 0; x < side; x++) {
                    int v = 4 * matrix[y * side + x];
                    next[y * 2 * side + x] = v;
                    next[y * 2 * side + x + side] = v + 2;
                    next[(y + side) * 2 * side + x] = v + 3;
                    next[(y + side) * 2 * side + x + side] = v + 1;
                }
            }
            matrix = next;
        }
        float[] thresholds = new float[matrix.length];
        for (int k = 0; k < matrix.length; k++) {
            thresholds[k] = (matrix[k] + 0.5f) / 64;
        }
        return thresholds;
    }

    /**
     * Encodes one row to 8 bits: {@code count} samples, interleaved with so many channels.
     *
     * @param left the column of the first, on the grid that is dithered
     * @param y its row there
     */
    void toBytes(float[] light, int count, int channels, int left, int y, byte[] out) {
        if (!dithered) {
            for (int k = 0; k < count; k++) {
                out[k] = sample(light[k], HALF);
            }
        } else if (channels == 1) {
            int row = (y & 7) * 8;
            for (int k = 0; k < count; k++) {
                out[k] = sample(light[k], BAYER[row + (left + k & 7)]);
            }
        } else {
            int row = (y & 7) * 8;
            for (int k = 0, x = left; k < count; k += 3, x++) {
                float threshold = BAYER[row + (x & 7)];
                out[k] = sample(light[k], threshold);
                out[k + 1] = sample(light[k + 1], threshold);
                out[k + 2] = sample(light[k + 2], threshold);
            }
        }
    }

    /** Limits are kept on whole numbers: that is cheaper than on the light, and takes care of NaN as well. */
    private static byte sample(float light, float threshold) {
        float position = light * STEPS;
        int step = Math.max(0, Math.min(STEPS, (int) position));
        float level = LEVELS[step];
        int sample = (int) (level + (position - step) * (LEVELS[step + 1] - level) + threshold);
        return (byte) Math.max(0, sample);
    }

    /** One row as shares of light in 16 bits, rounded to nearest. */
    static void toShares(float[] light, int count, short[] out) {
        for (int k = 0; k < count; k++) {
            out[k] = (short) (int) (Math.max(0f, Math.min(1f, light[k])) * 65535 + HALF);
        }
    }

    /** Encodes one row to 16 bits, rounded to nearest. */
    static void toShorts(float[] light, int count, short[] out) {
        float[] levels = Sixteen.LEVELS;
        for (int k = 0; k < count; k++) {
            float position = Math.max(0f, Math.min(1f, light[k])) * Sixteen.STEPS;
            int step = (int) position;
            float level = levels[step] + (position - step) * (levels[step + 1] - levels[step]);
            out[k] = (short) (int) (level + 0.5f);
        }
    }
}
