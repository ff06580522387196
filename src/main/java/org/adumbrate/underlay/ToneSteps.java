package org.adumbrate.underlay;

import org.adumbrate.raster.SrgbCurve;

/** Sorts luminance into the 256 levels of encoded sRGB. */
final class ToneSteps {
    private static final int FINE = 16384;
    private static final byte[] LEVELS = levels();

    private ToneSteps() {}

    private static byte[] levels() {
        byte[] levels = new byte[FINE + 1];
        for (int k = 0; k <= FINE; k++) {
            levels[k] = (byte) Math.round(SrgbCurve.encode(k / (double) FINE) * 255);
        }
        return levels;
    }

    /** The level, 0 to 255, of a luminance; light above 1 counts as 255. */
    static int of(float luminance) {
        float within = Math.max(0, Math.min(1, luminance));
        return LEVELS[(int) (within * FINE + 0.5f)] & 0xff;
    }
}
