package org.adumbrate.raster;

/**
 * The transfer curve of sRGB (IEC 61966-2-1:1999), between an encoded value and linear light, both 0 to 1.
 *
 * <p>Checked values: encoded 128/255 is light 0.2158605; light 0.5 is encoded 187.516/255.
 */
public final class SrgbCurve {
    private SrgbCurve() {}

    /** Linear light of an encoded value. */
    public static double decode(double encoded) {
        return encoded <= 0.04045 ? encoded / 12.92 : Math.pow((encoded + 0.055) / 1.055, 2.4);
    }

    /** Encoded value of linear light. */
    public static double encode(double light) {
        return light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    }
}
