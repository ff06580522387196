package org.adumbrate.raster.decode.light;

import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.SrgbCurve;

/** A transfer curve: from an encoded value, 0 to 1, to light, 0 to 1. */
@FunctionalInterface
public interface Curve {
    /** That of sRGB. */
    Curve SRGB = SrgbCurve::decode;

    /** The light of an encoded value. */
    double light(double encoded);

    /** {@code c^exponent}. */
    static Curve power(double exponent) {
        return exponent == 1 ? c -> c : c -> Math.pow(c, exponent);
    }

    /** Evenly spaced values from 0 to 1, joined by straight lines; at least two. */
    static Curve points(double[] values) {
        int last = values.length - 1;
        return c -> {
            double place = c * last;
            int below = Math.min((int) place, last - 1);
            double share = place - below;
            return values[below] * (1 - share) + values[below + 1] * share;
        };
    }

    /** The curve at each value that a sample of an integer type can take, cut to 0 to 1. */
    default float[] table(SampleType type) {
        int codes = 1 << (8 * type.bytes());
        float[] table = new float[codes];
        for (int code = 0; code < codes; code++) {
            table[code] = (float) Math.max(0, Math.min(1, light(code / (codes - 1.0))));
        }
        return table;
    }

    /** The largest difference in light between this curve and another, at the 8-bit codes. */
    default double distanceTo(Curve other) {
        double most = 0;
        for (int code = 0; code < 256; code++) {
            most = Math.max(most, Math.abs(light(code / 255.0) - other.light(code / 255.0)));
        }
        return most;
    }
}
