package org.adumbrate.proof.scene;

import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;

/**
 * A straight line on the sheet from one point to another, in mm.
 *
 * @param x0 of its begin
 * @param y0 of its begin
 * @param x1 of its end
 * @param y1 of its end
 */
record SketchLine(double x0, double y0, double x1, double y1) {
    /** So near an end, as a share of the whole, lines meet and do not cross. */
    private static final double INNER = 1e-6;

    /** The point of it that is nearest to another. */
    SheetPoint nearest(SheetPoint point) {
        double dx = x1 - x0;
        double dy = y1 - y0;
        double length = dx * dx + dy * dy;
        double t = length == 0 ? 0 : ((point.x() - x0) * dx + (point.y() - y0) * dy) / length;
        double at = Math.max(0, Math.min(1, t));
        return new SheetPoint(x0 + at * dx, y0 + at * dy);
    }

    double distanceTo(SheetPoint point) {
        return distance(nearest(point), point);
    }

    /** Where it crosses another between the ends of both; nothing where it does not, or both run the same way. */
    Optional<SheetPoint> crossing(SketchLine other) {
        double ax = x1 - x0;
        double ay = y1 - y0;
        double bx = other.x1 - other.x0;
        double by = other.y1 - other.y0;
        double cross = ax * by - ay * bx;
        if (cross == 0) {
            return Optional.empty();
        }
        double t = ((other.x0 - x0) * by - (other.y0 - y0) * bx) / cross;
        double u = ((other.x0 - x0) * ay - (other.y0 - y0) * ax) / cross;
        return t > INNER && t < 1 - INNER && u > INNER && u < 1 - INNER
                ? Optional.of(new SheetPoint(x0 + t * ax, y0 + t * ay))
                : Optional.empty();
    }

    static double distance(SheetPoint a, SheetPoint b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }
}
