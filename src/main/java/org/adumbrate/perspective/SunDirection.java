package org.adumbrate.perspective;

import java.util.Locale;

/**
 * The unit vector from the model toward the sun, along the model's axes.
 *
 * @param x to the right
 * @param y into the drawing
 * @param z up; above zero while the sun is up
 */
public record SunDirection(double x, double y, double z) {
    /** @throws IllegalArgumentException if the vector is not of unit length, to a billionth */
    public SunDirection {
        if (!(Math.abs(x * x + y * y + z * z - 1) < 2e-9)) {
            throw new IllegalArgumentException(
                    "a direction must have unit length, not (%s, %s, %s)".formatted(x, y, z));
        }
    }

    /**
     * From angles.
     *
     * @param azimuthDeg clockwise from north, seen from above
     * @param altitudeDeg above the horizon
     * @param northDeg north, clockwise from the model's +Y, seen from above
     */
    public static SunDirection of(double azimuthDeg, double altitudeDeg, double northDeg) {
        double around = Math.toRadians(azimuthDeg + northDeg);
        double up = Math.toRadians(altitudeDeg);
        return new SunDirection(Math.sin(around) * Math.cos(up), Math.cos(around) * Math.cos(up), Math.sin(up));
    }

    /** Its height above the horizon in degrees. */
    public double altitudeDeg() {
        return Math.toDegrees(Math.atan2(z, Math.hypot(x, y)));
    }

    /** Where it stands clockwise from north in degrees, 0 to 360, if north lies so far clockwise from the model's +Y. */
    public double azimuthDeg(double northDeg) {
        double azimuth = (Math.toDegrees(Math.atan2(x, y)) - northDeg) % 360;
        return azimuth < 0 ? azimuth + 360 : azimuth;
    }

    /** How long a shadow an upright of a metre casts on level ground, in metres; the sun must be up. */
    public double shadowPerMetre() {
        return Math.hypot(x, y) / z;
    }

    /** The angle to another direction in degrees, 0 to 180. */
    public double degreesTo(SunDirection other) {
        double along = x * other.x + y * other.y + z * other.z;
        double across = Math.sqrt(Math.pow(y * other.z - z * other.y, 2)
                + Math.pow(z * other.x - x * other.z, 2)
                + Math.pow(x * other.y - y * other.x, 2));
        return Math.toDegrees(Math.atan2(across, along));
    }

    String told(double northDeg) {
        return String.format(Locale.ROOT, "azimuth %.1f and altitude %.1f", azimuthDeg(northDeg), altitudeDeg());
    }
}
