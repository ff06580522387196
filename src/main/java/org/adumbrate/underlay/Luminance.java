package org.adumbrate.underlay;

/** The weights of Rec. ITU-R BT.709 on linear sRGB primaries; they add up to 1. */
final class Luminance {
    static final float RED = 0.2126f;
    static final float GREEN = 0.7152f;
    static final float BLUE = 0.0722f;

    private Luminance() {}

    /** Luminance of pixels, in place of their three channels, into {@code grey}. */
    static void ofRow(float[] rgb, float[] grey, int pixels) {
        for (int k = 0, s = 0; k < pixels; k++, s += 3) {
            grey[k] = RED * rgb[s] + GREEN * rgb[s + 1] + BLUE * rgb[s + 2];
        }
    }
}
