package org.adumbrate.raster.decode;

/**
 * What the sample pictures hold: values made of a pixel's own coordinates, so that one that is out of its place shows. The
 * script beside the sample files has the same formulas.
 */
public final class Pattern {
    public static final int WIDTH = 13;
    public static final int HEIGHT = 9;

    private Pattern() {}

    public static int code8(int x, int y, int channel) {
        return (x * 37 + y * 59 + channel * 83 + 11) % 256;
    }

    public static int code16(int x, int y, int channel) {
        return (x * 9377 + y * 15013 + channel * 21001 + 257) % 65536;
    }

    public static int code(int x, int y, int channel, int bits) {
        return bits == 16 ? code16(x, y, channel) : code8(x, y, channel) >> (8 - bits);
    }

    public static float real(int x, int y, int channel) {
        return x * 0.31f + y * 0.17f + channel * 0.07f - 0.25f;
    }

    /** IEC 61966-2-1, written out a second time. */
    public static double srgb(double encoded) {
        return encoded > 0.04045 ? Math.pow((encoded + 0.055) / 1.055, 2.4) : encoded / 12.92;
    }

    /** The light of an sRGB code of so many bits. */
    public static double srgb(int code, int bits) {
        return srgb(code / (Math.pow(2, bits) - 1));
    }

    /** Light of the 8-bit pattern. */
    public static double light8(int x, int y, int channel) {
        return srgb(code8(x, y, channel), 8);
    }

    /** Light of the 16-bit pattern. */
    public static double light16(int x, int y, int channel) {
        return srgb(code16(x, y, channel), 16);
    }
}
