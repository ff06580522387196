package org.adumbrate.start;

import java.util.Arrays;
import java.util.function.IntPredicate;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.GreyImage;

/**
 * What the tones of a picture look like, in shares of 0 to 1; tones are those of sRGB.
 *
 * @param lit the share of pixels as bright as the brightest tone that a notable part has
 * @param oneDark the share of the others that have one tone: nearly all in a render of hard shadows, few in soft ones
 * @param soft the share of neighbours that differ by a little
 * @param rough how much such small steps change from pixel to pixel, as a share of them: near 0 on planes, above 1 in noise
 * @param drawn the share of pixels that are darker than both sides: drawn edges
 */
record ToneLook(double lit, double oneDark, double soft, double rough, double drawn) {
    private static final int PIXELS = 1_000_000;

    /** A tone must be that of this share of the picture to count. */
    private static final double NOTABLE = 0.01;

    private static final int NEAR_WHITE = 6;

    /** What is not lit is darker than this share of the white, and of one tone within so many of 255 steps. */
    private static final double UNLIT = 0.9;

    private static final int ONE_TONE = 10;

    private static final float LEAST_STEP = 0.002f;
    private static final float SMALL_STEP = 0.04f;
    private static final float DRAWN_STEP = 0.15f;

    /** Looks at the pixels of a picture that count. */
    static ToneLook of(GreyImage image, IntPredicate counts) {
        return new Looking(reduced(image), image, counts).look();
    }

    /** Means of blocks of light, as sRGB tones (IEC 61966-2-1). */
    static GreyImage reduced(GreyImage image) {
        int times = 1;
        while (image.size().count() / ((long) times * times) > PIXELS) {
            times++;
        }
        int width = image.size().width() / times;
        int height = image.size().height() / times;
        float[] tones = new float[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                float sum = 0;
                for (int k = 0; k < times * times; k++) {
                    sum += image.at(x * times + k % times, y * times + k / times);
                }
                tones[y * width + x] = tone(sum / (times * times));
            }
        }
        return new GreyImage(new PixelSize(width, height), tones);
    }

    private static float tone(float light) {
        if (!(light > 0)) {
            return light <= 0 ? 0 : 1;
        }
        return light >= 1
                ? 1
                : light <= 0.0031308f ? 12.92f * light : (float) (1.055 * Math.pow(light, 1 / 2.4) - 0.055);
    }

    private static final class Looking {
        private final GreyImage tones;
        private final int width;
        private final boolean[] counts;
        private final int[] steps = new int[256];
        private int total;

        Looking(GreyImage tones, GreyImage whole, IntPredicate wanted) {
            this.tones = tones;
            this.width = tones.size().width();
            this.counts = new boolean[tones.light().length];
            int times = whole.size().width() / width;
            for (int k = 0; k < counts.length; k++) {
                counts[k] = wanted.test(
                        (k / width * times + times / 2) * whole.size().width() + k % width * times + times / 2);
                if (counts[k]) {
                    steps[Math.round(255 * tones.light()[k])]++;
                    total++;
                }
            }
        }

        ToneLook look() {
            int white = 255;
            while (white > 0 && count(white - 2, white + 2) < NOTABLE * total) {
                white--;
            }
            int unlit = (int) (UNLIT * white);
            int most = 0;
            for (int k = 0; k < unlit; k++) {
                most = Math.max(most, count(k - ONE_TONE, Math.min(unlit, k + ONE_TONE)));
            }
            double oneDark = most / (double) Math.max(1, count(0, unlit));
            return edges((double) count(white - NEAR_WHITE, 255) / Math.max(1, total), oneDark);
        }

        private int count(int from, int to) {
            int sum = 0;
            for (int k = Math.max(0, from); k <= Math.min(255, to); k++) {
                sum += steps[k];
            }
            return sum;
        }

        private ToneLook edges(double lit, double oneDark) {
            float[] t = tones.light();
            float[] changes = new float[2 * t.length];
            int soft = 0;
            int drawn = 0;
            for (int k = 2 * width + 2; k < t.length - 2 * width - 2; k++) {
                if (!counts[k - 1] || !counts[k + 1] || !counts[k - width] || !counts[k + width]) {
                    continue;
                }
                for (int next = 1; next <= width; next += width - 1) {
                    float step = Math.abs(t[k + next] - t[k]);
                    if (step > LEAST_STEP && step < SMALL_STEP) {
                        changes[soft++] = Math.abs(t[k + next] - 2 * t[k] + t[k - next]) / step;
                    }
                }
                float across = Math.min(t[k - 2], t[k + 2]) - t[k];
                float along = Math.min(t[k - 2 * width], t[k + 2 * width]) - t[k];
                drawn += Math.max(across, along) > DRAWN_STEP ? 1 : 0;
            }
            Arrays.sort(changes, 0, soft);
            double all = Math.max(1, total);
            return new ToneLook(lit, oneDark, soft / all / 2, soft == 0 ? 0 : changes[soft / 2], drawn / all);
        }
    }
}
