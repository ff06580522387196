package org.adumbrate.linework.cover;

/**
 * A straight line from a point in a direction.
 *
 * @param x where it begins
 * @param y where it begins
 * @param ux its direction, of length 1
 * @param uy its direction
 * @param length in mm
 */
record Flank(double x, double y, double ux, double uy, double length) {
    /** The line beside one from point to point, so far to its right as it goes, y being down; a point counts as level. */
    static Flank beside(double x0, double y0, double x1, double y1, double offset) {
        double length = Math.hypot(x1 - x0, y1 - y0);
        double ux = length == 0 ? 1 : (x1 - x0) / length;
        double uy = length == 0 ? 0 : (y1 - y0) / length;
        return new Flank(x0 - offset * uy, y0 + offset * ux, ux, uy, length);
    }

    /** How far along the line a point lies. */
    double along(double px, double py) {
        return (px - x) * ux + (py - y) * uy;
    }

    /** How far to the right of the line a point lies. */
    double across(double px, double py) {
        return (py - y) * ux - (px - x) * uy;
    }
}
