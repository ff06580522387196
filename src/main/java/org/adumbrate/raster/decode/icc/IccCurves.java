package org.adumbrate.raster.decode.icc;

import java.nio.ByteBuffer;
import org.adumbrate.raster.decode.light.Curve;

/** Reads the two kinds of curve in a colour profile: curveType and parametricCurveType (ICC.1:2022, 10.6 and 10.18). */
final class IccCurves {
    private static final int CURV = 0x63757276;
    private static final int PARA = 0x70617261;

    /** Parameters of each kind of parametric curve. */
    private static final int[] PARAMETERS = {1, 3, 4, 5, 7};

    private IccCurves() {}

    static Curve read(String tag, ByteBuffer data) throws MalformedProfileException {
        int type = data.getInt(0);
        if (data.limit() >= 12 && type == CURV) {
            return sampled(tag, data);
        }
        if (data.limit() >= 12 && type == PARA) {
            return parametric(tag, data);
        }
        throw new MalformedProfileException("its tag " + tag + " holds no curve");
    }

    private static Curve sampled(String tag, ByteBuffer data) throws MalformedProfileException {
        int count = data.getInt(8);
        if (count < 0 || 12 + 2L * count > data.limit()) {
            throw new MalformedProfileException("the curve of its tag " + tag + " is cut short");
        }
        if (count == 0) {
            return Curve.power(1);
        }
        if (count == 1) {
            return Curve.power((data.getShort(12) & 0xffff) / 256.0);
        }
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = (data.getShort(12 + 2 * i) & 0xffff) / 65535.0;
        }
        return Curve.points(values);
    }

    private static Curve parametric(String tag, ByteBuffer data) throws MalformedProfileException {
        int kind = data.getShort(8) & 0xffff;
        if (kind >= PARAMETERS.length || 12 + 4 * PARAMETERS[kind] > data.limit()) {
            throw new MalformedProfileException("the curve of its tag " + tag + " is of an unknown kind or cut short");
        }
        double[] p = new double[7];
        for (int i = 0; i < PARAMETERS[kind]; i++) {
            p[i] = data.getInt(12 + 4 * i) / 65536.0;
        }
        return parametric(kind, p[0], p[1], p[2], p[3], p[4], p[5], p[6]);
    }

    /** Table 68 of the standard, with its letters. */
    private static Curve parametric(int kind, double g, double a, double b, double c, double d, double e, double f) {
        return switch (kind) {
            case 0 -> Curve.power(g);
            case 1 -> x -> x >= -b / a ? power(a * x + b, g) : 0;
            case 2 -> x -> x >= -b / a ? power(a * x + b, g) + c : c;
            case 3 -> x -> x >= d ? power(a * x + b, g) : c * x;
            default -> x -> x >= d ? power(a * x + b, g) + e : c * x + f;
        };
    }

    private static double power(double base, double exponent) {
        return base <= 0 ? 0 : Math.pow(base, exponent);
    }
}
