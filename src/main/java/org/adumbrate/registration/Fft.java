package org.adumbrate.registration;

/**
 * The discrete Fourier transform of a square complex grid whose side is a power of two: Cooley and Tukey, Mathematics of
 * Computation 19, 297-301, 1965 (radix 2, in place). Not normalised: forward then inverse gives the values times side².
 */
final class Fft {
    private final int side;
    private final float[] cosines;
    private final float[] sines;
    private final int[] reversed;

    Fft(int side) {
        if (Integer.bitCount(side) != 1) {
            throw new IllegalArgumentException("the side must be a power of two, not " + side);
        }
        this.side = side;
        cosines = new float[side / 2];
        sines = new float[side / 2];
        for (int k = 0; k < side / 2; k++) {
            cosines[k] = (float) Math.cos(2 * Math.PI * k / side);
            sines[k] = (float) Math.sin(2 * Math.PI * k / side);
        }
        reversed = new int[side];
        int bits = Integer.numberOfTrailingZeros(side);
        for (int k = 0; k < side; k++) {
            reversed[k] = bits == 0 ? 0 : Integer.reverse(k) >>> (32 - bits);
        }
    }

    int side() {
        return side;
    }

    /** Exponent −2πi, rows then columns. */
    void forward(float[] re, float[] im) {
        for (int y = 0; y < side; y++) {
            row(re, im, y * side);
        }
        columns(re, im);
    }

    /** Exponent +2πi: the forward transform with the two parts exchanged. */
    void inverse(float[] re, float[] im) {
        forward(im, re);
    }

    /** An empty row stays empty. */
    private void row(float[] re, float[] im, int at) {
        if (isEmpty(re, at) && isEmpty(im, at)) {
            return;
        }
        for (int k = 0; k < side; k++) {
            int r = reversed[k];
            if (r > k) {
                swap(re, at + k, at + r);
                swap(im, at + k, at + r);
            }
        }
        for (int half = 1; half < side; half *= 2) {
            int stride = side / (2 * half);
            for (int start = at; start < at + side; start += 2 * half) {
                for (int k = 0; k < half; k++) {
                    butterfly(re, im, start + k, start + k + half, cosines[k * stride], sines[k * stride]);
                }
            }
        }
    }

    private boolean isEmpty(float[] values, int at) {
        for (int k = at; k < at + side; k++) {
            if (values[k] != 0) {
                return false;
            }
        }
        return true;
    }

    /** All columns together, so that memory is read in order. */
    private void columns(float[] re, float[] im) {
        for (int k = 0; k < side; k++) {
            int r = reversed[k];
            for (int x = 0; r > k && x < side; x++) {
                swap(re, k * side + x, r * side + x);
                swap(im, k * side + x, r * side + x);
            }
        }
        for (int half = 1; half < side; half *= 2) {
            int stride = side / (2 * half);
            for (int start = 0; start < side; start += 2 * half) {
                for (int k = 0; k < half; k++) {
                    float c = cosines[k * stride];
                    float s = sines[k * stride];
                    int a = (start + k) * side;
                    int b = a + half * side;
                    for (int x = 0; x < side; x++) {
                        butterfly(re, im, a + x, b + x, c, s);
                    }
                }
            }
        }
    }

    private static void butterfly(float[] re, float[] im, int a, int b, float c, float s) {
        float tr = re[b] * c + im[b] * s;
        float ti = im[b] * c - re[b] * s;
        re[b] = re[a] - tr;
        im[b] = im[a] - ti;
        re[a] += tr;
        im[a] += ti;
    }

    private static void swap(float[] values, int a, int b) {
        float kept = values[a];
        values[a] = values[b];
        values[b] = kept;
    }
}
