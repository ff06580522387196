package org.adumbrate.registration;

/**
 * Finds bars of one tone along the sides of a picture. A bar ends at a straight step right across the picture; a plain
 * background that happens to have one tone does not, and is not taken for a bar.
 */
final class Bars {
    /** How far a pixel of a bar may stray from the bar's tone: compression and noise. */
    private static final float STRAY = 0.06f;

    /** Share of a bar's row that must have its tone. */
    private static final double UNIFORM = 0.98;

    /** Share of the rows after a bar that must have another tone. */
    private static final double STEP = 0.55;

    /** Bars together take no more than this share of a side. */
    private static final double MOST = 0.8;

    private final ToneImage image;

    private Bars(ToneImage image) {
        this.image = image;
    }

    /** The part of the image between its bars, in its own pixels; the whole image where there are none. */
    static PixelRect inside(ToneImage image) {
        Bars bars = new Bars(image);
        int top = bars.depth(true, false);
        int bottom = bars.depth(true, true);
        int left = bars.depth(false, false);
        int right = bars.depth(false, true);
        if (top + bottom > MOST * image.height || left + right > MOST * image.width) {
            return new PixelRect(0, 0, image.width, image.height);
        }
        return new PixelRect(left, top, image.width - right, image.height - bottom);
    }

    /** How many rows (or columns) a bar takes from the top or left (or from the far side); 0 if there is none. */
    private int depth(boolean rows, boolean far) {
        int across = rows ? image.height : image.width;
        float tone = median(rows, far);
        int limit = (int) (MOST * across);
        int k = 0;
        while (k < limit && share(rows, far, k, tone) >= UNIFORM) {
            k++;
        }
        if (k == 0 || k >= limit) {
            return 0;
        }
        // Compression blurs the step over a few rows: it lies where most pixels change over.
        int end = k;
        while (end < limit && end < k + 8 && share(rows, far, end, tone) > 0.5) {
            end++;
        }
        for (int next = end; next < Math.min(across, end + 4); next++) {
            if (1 - share(rows, far, next, tone) < STEP) {
                return 0;
            }
        }
        return end;
    }

    private float median(boolean rows, boolean far) {
        int along = rows ? image.width : image.height;
        float[] values = new float[along];
        for (int k = 0; k < along; k++) {
            values[k] = pixel(rows, far, 0, k);
        }
        java.util.Arrays.sort(values);
        return values[along / 2];
    }

    /** Share of the pixels of row k that have the bar's tone. */
    private double share(boolean rows, boolean far, int k, float tone) {
        int along = rows ? image.width : image.height;
        int alike = 0;
        for (int j = 0; j < along; j++) {
            alike += Math.abs(pixel(rows, far, k, j) - tone) <= STRAY ? 1 : 0;
        }
        return (double) alike / along;
    }

    private float pixel(boolean rows, boolean far, int k, int along) {
        int depth = far ? (rows ? image.height : image.width) - 1 - k : k;
        return rows ? image.tone[depth * image.width + along] : image.tone[along * image.width + depth];
    }
}
