package org.adumbrate.sheetfile;

/**
 * An angle.
 *
 * @param degrees in degrees of 1/360 turn
 */
public record Degrees(double degrees) {
    /** The angle in radians. */
    public double radians() {
        return Math.toRadians(degrees);
    }
}
