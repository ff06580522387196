package org.adumbrate.raster;

/** Luminance of linear light, by the weights of Rec. ITU-R BT.709; they add up to 1. */
public final class Luminance {
    /** The share of linear red. */
    public static final float RED = 0.2126f;

    /** The share of linear green. */
    public static final float GREEN = 0.7152f;

    /** The share of linear blue. */
    public static final float BLUE = 0.0722f;

    private Luminance() {}

    /** Luminance of one pixel; white (1, 1, 1) has 1. */
    public static float of(float red, float green, float blue) {
        return RED * red + GREEN * green + BLUE * blue;
    }

    /** Luminance of a row of pixels with three channels; may be written over the row itself. */
    public static void ofRow(float[] rgb, float[] grey, int pixels) {
        for (int k = 0, s = 0; k < pixels; k++, s += 3) {
            grey[k] = of(rgb[s], rgb[s + 1], rgb[s + 2]);
        }
    }
}
