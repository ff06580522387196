package org.adumbrate.registration;

import java.util.stream.IntStream;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;

/**
 * A pass in a tone in which equal steps look about equal (the square root of linear light), at a fraction of the pass's
 * resolution. Points are given in its own continuous pixels.
 */
final class ToneImage {
    /** Means of blocks of a plain picture differ by less than this, in tone. */
    private static final float PLAIN = 0.03f;

    private static final int BINS = 48;

    final int width;
    final int height;
    /** Pixels of the pass that one pixel of this image spans, each way. */
    final int reduction;

    final float[] tone;

    ToneImage(int width, int height, int reduction, float[] tone) {
        this.width = width;
        this.height = height;
        this.reduction = reduction;
        this.tone = tone;
    }

    /** The tone of a pass; what is no number counts as white. */
    static ToneImage of(PassImage pass) {
        float[] light = pass.grey().light();
        float[] tone = new float[light.length];
        int width = pass.grey().size().width();
        int height = pass.grey().size().height();
        IntStream.range(0, height).parallel().forEach(y -> {
            for (int k = y * width; k < (y + 1) * width; k++) {
                float value = light[k];
                tone[k] = value >= 0 && value < 4 ? (float) Math.sqrt(value) : value < 0 ? 0 : 1;
            }
        });
        return new ToneImage(width, height, pass.reduction(), tone);
    }

    /** Means of whole blocks of {@code times x times} pixels; incomplete blocks are left out. */
    ToneImage reduced(int times) {
        if (times == 1) {
            return this;
        }
        int w = width / times;
        int h = height / times;
        float[] means = new float[w * h];
        IntStream.range(0, h).parallel().forEach(y -> {
            for (int row = y * times; row < (y + 1) * times; row++) {
                for (int x = 0; x < w; x++) {
                    float sum = 0;
                    for (int k = row * width + x * times, end = k + times; k < end; k++) {
                        sum += tone[k];
                    }
                    means[y * w + x] += sum;
                }
            }
            for (int k = y * w; k < (y + 1) * w; k++) {
                means[k] /= times * times;
            }
        });
        return new ToneImage(w, h, reduction * times, means);
    }

    /** The same picture seen in a mirror, left and right exchanged. */
    ToneImage mirrored() {
        float[] flipped = new float[tone.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                flipped[y * width + x] = tone[y * width + width - 1 - x];
            }
        }
        return new ToneImage(width, height, reduction, flipped);
    }

    /** True if blocks of pixels inside a rectangle differ by no more than noise would make them. */
    boolean isPlain(PixelRect inside) {
        int block = Math.max(1, Math.min(inside.width(), inside.height()) / 40);
        ToneImage means = reduced(block);
        PixelRect blocks = inside.reduced(block);
        float least = Float.MAX_VALUE;
        float most = -Float.MAX_VALUE;
        for (int y = blocks.top(); y < blocks.bottom(); y++) {
            for (int x = blocks.left(); x < blocks.right(); x++) {
                least = Math.min(least, means.tone[y * means.width + x]);
                most = Math.max(most, means.tone[y * means.width + x]);
            }
        }
        return most - least < PLAIN;
    }

    /**
     * True if the image has one tone, but for a few pixels in a hundred, wherever it lies more than two pixels outside the
     * sheet.
     *
     * @param map from the sheet to pixels of this image
     */
    boolean isPlainOutside(Affine<SheetPoint, RasterPoint> map, SheetSize sheet) {
        double left = map.mapX(0, 0) - 2;
        double top = map.mapY(0, 0) - 2;
        double right = map.mapX(sheet.widthMm(), sheet.heightMm()) + 2;
        double bottom = map.mapY(sheet.widthMm(), sheet.heightMm()) + 2;
        int[] counts = new int[BINS + 1];
        int total = 0;
        for (int y = 0; y < height; y += 2) {
            for (int x = 0; x < width; x += 2) {
                if (x + 1 < left || x > right || y + 1 < top || y > bottom) {
                    counts[(int) (BINS * Math.min(1, tone[y * width + x]))]++;
                    total++;
                }
            }
        }
        int most = 0;
        for (int k = 2; k <= BINS - 2; k++) {
            most = Math.max(most, counts[k - 2] + counts[k - 1] + counts[k] + counts[k + 1] + counts[k + 2]);
        }
        return most >= 0.97 * total;
    }

    /** The tone at a point by bilinear interpolation between pixel centres; the point must lie half a pixel inside. */
    float at(double x, double y) {
        double px = x - 0.5;
        double py = y - 0.5;
        int ix = Math.min((int) px, width - 2);
        int iy = Math.min((int) py, height - 2);
        float fx = (float) (px - ix);
        float fy = (float) (py - iy);
        int k = iy * width + ix;
        float upper = tone[k] + fx * (tone[k + 1] - tone[k]);
        float lower = tone[k + width] + fx * (tone[k + width + 1] - tone[k + width]);
        return upper + fy * (lower - upper);
    }
}
