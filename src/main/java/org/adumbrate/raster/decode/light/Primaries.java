package org.adumbrate.raster.decode.light;

/** Colour spaces given by the chromaticities of their white and primaries. */
public final class Primaries {
    /** The Bradford cone responses (K. M. Lam, 1985; as used by ICC.1:2022, annex E). */
    private static final Matrix3 BRADFORD =
            new Matrix3(0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296);

    /** White, red, green and blue of sRGB (IEC 61966-2-1), x and y of each. */
    private static final double[] SRGB = {0.3127, 0.329, 0.64, 0.33, 0.3, 0.6, 0.15, 0.06};

    /** Nearer than this, chromaticities are meant to be the same. */
    private static final double SAME = 0.002;

    private Primaries() {}

    /**
     * From linear light under given primaries to linear sRGB, whites mapped to each other.
     *
     * @param xy x and y of white, red, green, blue
     */
    public static Matrix3 toSrgb(double[] xy) {
        return toXyz(SRGB).inverse().after(adaptation(xy)).after(toXyz(xy));
    }

    /** Whether given primaries are those of sRGB. */
    public static boolean areSrgb(double[] xy) {
        for (int i = 0; i < xy.length; i++) {
            if (Math.abs(xy[i] - SRGB[i]) > SAME) {
                return false;
            }
        }
        return true;
    }

    private static Matrix3 toXyz(double[] xy) {
        double[] white = xyz(xy[0], xy[1]);
        Matrix3 unscaled = Matrix3.ofColumns(xyz(xy[2], xy[3]), xyz(xy[4], xy[5]), xyz(xy[6], xy[7]));
        double[] weight = unscaled.inverse().times(white[0], white[1], white[2]);
        return unscaled.after(Matrix3.diagonal(weight[0], weight[1], weight[2]));
    }

    private static Matrix3 adaptation(double[] xy) {
        double[] from = cones(xy);
        double[] to = cones(SRGB);
        return BRADFORD.inverse()
                .after(Matrix3.diagonal(to[0] / from[0], to[1] / from[1], to[2] / from[2]))
                .after(BRADFORD);
    }

    private static double[] cones(double[] xy) {
        double[] white = xyz(xy[0], xy[1]);
        return BRADFORD.times(white[0], white[1], white[2]);
    }

    private static double[] xyz(double x, double y) {
        return new double[] {x / y, 1, (1 - x - y) / y};
    }
}
