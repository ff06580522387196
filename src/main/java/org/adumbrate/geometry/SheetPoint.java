package org.adumbrate.geometry;

/**
 * A point on the sheet.
 *
 * @param x millimetres right of the sheet's left edge
 * @param y millimetres below the sheet's top edge
 */
public record SheetPoint(double x, double y) implements PlanePoint {
    /** The distance to another point, in mm. */
    public double distanceTo(SheetPoint other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
