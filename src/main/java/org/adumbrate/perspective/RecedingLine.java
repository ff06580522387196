package org.adumbrate.perspective;

import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.SheetPoint;

/**
 * A straight line of a drawing that is neither level nor upright.
 *
 * @param middle its middle
 * @param nx its unit normal
 * @param ny its unit normal
 * @param lengthMm its length
 */
record RecedingLine(SheetPoint middle, double nx, double ny, double lengthMm) {
    static RecedingLine of(PathPiece piece) {
        double across = piece.x3() - piece.x0();
        double down = piece.y3() - piece.y0();
        double length = Math.hypot(across, down);
        SheetPoint middle = new SheetPoint((piece.x0() + piece.x3()) / 2, (piece.y0() + piece.y3()) / 2);
        return new RecedingLine(middle, down / length, -across / length, length);
    }

    /** How far its ends are from where they were if it pointed at a point and had the same middle, in mm; signed. */
    double missed(SheetPoint point) {
        return offset(point) * leverage(point);
    }

    /** The distance of a point from the line, in mm; signed. */
    double offset(SheetPoint point) {
        return (point.x() - middle.x()) * nx + (point.y() - middle.y()) * ny;
    }

    /** How much its ends move for each mm that a point moves across it. */
    double leverage(SheetPoint point) {
        return lengthMm / 2 / Math.max(lengthMm / 2, point.distanceTo(middle));
    }

    /** True if both ends of another lie within so many mm of it or its continuation. */
    boolean isInLineWith(RecedingLine other, double mm) {
        double turn = Math.abs(nx * other.ny - ny * other.nx) * other.lengthMm / 2;
        return Math.abs(offset(other.middle)) + turn < mm;
    }

    /** Where its continuation crosses another's; not finite if they are parallel. */
    SheetPoint crossing(RecedingLine other) {
        double c = nx * middle.x() + ny * middle.y();
        double d = other.nx * other.middle.x() + other.ny * other.middle.y();
        double det = nx * other.ny - ny * other.nx;
        return new SheetPoint((c * other.ny - d * ny) / det, (nx * d - other.nx * c) / det);
    }
}
