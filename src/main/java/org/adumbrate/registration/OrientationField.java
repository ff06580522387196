package org.adumbrate.registration;

import java.util.stream.IntStream;

/**
 * Which way the edges of a picture run, as a complex number a pixel: its angle is twice the direction of the gradient, so that
 * light-to-dark and dark-to-light are the same, and its size grows with the contrast but soon levels off, so that a few
 * hard edges do not drown many soft ones.
 */
final class OrientationField {
    final int width;
    final int height;
    final float[] re;
    final float[] im;

    private OrientationField(int width, int height, float[] re, float[] im) {
        this.width = width;
        this.height = height;
        this.re = re;
        this.im = im;
    }

    /** The field of an image; empty outside the rectangle and along its rim. */
    static OrientationField of(ToneImage image, PixelRect inside) {
        int w = image.width;
        int h = image.height;
        float[] re = new float[w * h];
        float[] im = new float[w * h];
        IntStream.range(Math.max(1, inside.top() + 2), Math.min(h - 1, inside.bottom() - 2))
                .parallel()
                .forEach(y -> gradients(image, inside, y, re, im));
        OrientationField field = new OrientationField(w, h, re, im);
        field.level();
        return field;
    }

    /** Sobel's gradient (weights 1 2 1) of a row, as gx + i·gy. */
    private static void gradients(ToneImage image, PixelRect inside, int y, float[] re, float[] im) {
        float[] v = image.tone;
        int w = image.width;
        for (int x = Math.max(1, inside.left() + 2); x < Math.min(w - 1, inside.right() - 2); x++) {
            int k = y * w + x;
            float left = v[k - w - 1] + 2 * v[k - 1] + v[k + w - 1];
            float right = v[k - w + 1] + 2 * v[k + 1] + v[k + w + 1];
            float above = v[k - w - 1] + 2 * v[k - w] + v[k - w + 1];
            float below = v[k + w - 1] + 2 * v[k + w] + v[k + w + 1];
            re[k] = (right - left) / 8;
            im[k] = (below - above) / 8;
        }
    }

    /** Doubles the angles and levels the sizes: g becomes g² / (|g|² + m²), m being the mean size where there is any. */
    private void level() {
        double sum = 0;
        int some = 0;
        for (int k = 0; k < re.length; k++) {
            double size = Math.hypot(re[k], im[k]);
            if (size > 1e-3) {
                sum += size;
                some++;
            }
        }
        float mean = some == 0 ? 1 : (float) (sum / some);
        for (int k = 0; k < re.length; k++) {
            float gx = re[k];
            float gy = im[k];
            float below = gx * gx + gy * gy + mean * mean;
            re[k] = (gx * gx - gy * gy) / below;
            im[k] = 2 * gx * gy / below;
        }
    }

    /** The field smoothed by a box of {@code 2·radius + 1} pixels each way, twice. */
    OrientationField blurred(int radius) {
        float[] a = re.clone();
        float[] b = im.clone();
        for (int pass = 0; pass < 2; pass++) {
            box(a, radius);
            box(b, radius);
        }
        return new OrientationField(width, height, a, b);
    }

    private void box(float[] values, int radius) {
        float scale = 1f / (2 * radius + 1);
        float[] line = new float[Math.max(width, height) + 2 * radius + 1];
        for (int y = 0; y < height; y++) {
            slide(values, y * width, 1, width, radius, scale, line);
        }
        for (int x = 0; x < width; x++) {
            slide(values, x, width, height, radius, scale, line);
        }
    }

    private static void slide(float[] v, int at, int stride, int n, int radius, float scale, float[] line) {
        for (int k = 0; k < n; k++) {
            line[k] = v[at + k * stride];
        }
        float sum = 0;
        for (int k = 0; k < Math.min(radius, n); k++) {
            sum += line[k];
        }
        for (int k = 0; k < n; k++) {
            sum += k + radius < n ? line[k + radius] : 0;
            sum -= k - radius - 1 >= 0 ? line[k - radius - 1] : 0;
            v[at + k * stride] = sum * scale;
        }
    }
}
