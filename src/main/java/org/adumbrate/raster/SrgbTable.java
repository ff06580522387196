package org.adumbrate.raster;

/**
 * The curve of {@link SrgbCurve} by tables, for work on every pixel: straight lines between values at even steps. What
 * is encoded is right to 0.00001, and decoded again comes out within 0.00001 of what it was.
 */
public final class SrgbTable {
    private static final int STEPS = 1 << 13;
    private static final float[] LIGHT = new float[STEPS + 2];
    private static final float[] ENCODED = new float[STEPS + 2];

    static {
        for (int k = 0; k < LIGHT.length; k++) {
            double value = Math.min(1, k / (double) STEPS);
            LIGHT[k] = (float) SrgbCurve.decode(value);
            ENCODED[k] = (float) SrgbCurve.encode(value);
        }
    }

    private SrgbTable() {}

    /** Linear light of an encoded value; what is outside 0 to 1 is cut off. */
    public static float decode(float encoded) {
        return between(LIGHT, encoded);
    }

    /** Encoded value of linear light; what is outside 0 to 1 is cut off. */
    public static float encode(float light) {
        return between(ENCODED, light);
    }

    private static float between(float[] table, float value) {
        float position = Math.max(0f, Math.min(1f, value)) * STEPS;
        int step = (int) position;
        return table[step] + (position - step) * (table[step + 1] - table[step]);
    }
}
