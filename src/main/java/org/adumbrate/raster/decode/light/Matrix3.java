package org.adumbrate.raster.decode.light;

/** A 3 x 3 matrix of colour, row by row. */
public record Matrix3(
        double a11, double a12, double a13, double a21, double a22, double a23, double a31, double a32, double a33) {
    /**
     * From linear sRGB to the ICC profile connection space (XYZ under D50): the colorants of the sRGB profile, adapted
     * by the Bradford transform, as 16.16 fixed-point numbers (ICC, sRGB profile registry).
     */
    public static final Matrix3 SRGB_TO_D50 = new Matrix3(
            0x6FA2 / 65536.0,
            0x6299 / 65536.0,
            0x24A0 / 65536.0,
            0x38F5 / 65536.0,
            0xB785 / 65536.0,
            0x0F84 / 65536.0,
            0x0390 / 65536.0,
            0x18DA / 65536.0,
            0xB6CF / 65536.0);

    /** The matrix whose columns are three colours. */
    public static Matrix3 ofColumns(double[] first, double[] second, double[] third) {
        return new Matrix3(first[0], second[0], third[0], first[1], second[1], third[1], first[2], second[2], third[2]);
    }

    /** A diagonal matrix. */
    static Matrix3 diagonal(double x, double y, double z) {
        return new Matrix3(x, 0, 0, 0, y, 0, 0, 0, z);
    }

    /** This matrix after another: {@code this · first}. */
    public Matrix3 after(Matrix3 first) {
        return ofColumns(
                times(first.a11, first.a21, first.a31),
                times(first.a12, first.a22, first.a32),
                times(first.a13, first.a23, first.a33));
    }

    /** The product with a column. */
    double[] times(double x, double y, double z) {
        return new double[] {a11 * x + a12 * y + a13 * z, a21 * x + a22 * y + a23 * z, a31 * x + a32 * y + a33 * z};
    }

    /** Whether it maps all three axes to different places, so that {@link #inverse} exists. */
    public boolean isRegular() {
        double d = determinant();
        return Double.isFinite(d) && Math.abs(d) > 1e-9;
    }

    /** The inverse, by cofactors. */
    public Matrix3 inverse() {
        double d = determinant();
        return new Matrix3(
                (a22 * a33 - a23 * a32) / d,
                (a13 * a32 - a12 * a33) / d,
                (a12 * a23 - a13 * a22) / d,
                (a23 * a31 - a21 * a33) / d,
                (a11 * a33 - a13 * a31) / d,
                (a13 * a21 - a11 * a23) / d,
                (a21 * a32 - a22 * a31) / d,
                (a12 * a31 - a11 * a32) / d,
                (a11 * a22 - a12 * a21) / d);
    }

    /** All entries, row by row. */
    public double[] entries() {
        return new double[] {a11, a12, a13, a21, a22, a23, a31, a32, a33};
    }

    /** The largest difference of an entry from the identity's. */
    public double distanceToIdentity() {
        double[] entries = entries();
        double most = 0;
        for (int i = 0; i < entries.length; i++) {
            most = Math.max(most, Math.abs(entries[i] - (i % 4 == 0 ? 1 : 0)));
        }
        return most;
    }

    private double determinant() {
        return a11 * (a22 * a33 - a23 * a32) - a12 * (a21 * a33 - a23 * a31) + a13 * (a21 * a32 - a22 * a31);
    }
}
