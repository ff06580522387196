package org.adumbrate.registration;

import java.util.stream.IntStream;

/**
 * A pass in a tone in which equal steps look about equal (the square root of linear light), at a fraction of the pass's
 * resolution. Points are given in its own continuous pixels.
 */
final class ToneImage {
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
