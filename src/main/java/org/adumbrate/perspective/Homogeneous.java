package org.adumbrate.perspective;

import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;

/**
 * A point of the picture that may lie at infinity, and on either side of the viewer: seen at (x / w, y / w) while w is above
 * zero, behind the viewer while it is below, in the direction (x, y) where it is zero (Hartley and Zisserman, "Multiple View
 * Geometry", 2nd ed. 2004, chapter 2).
 *
 * @param x sheet x times w, in mm
 * @param y sheet y times w, in mm
 * @param w how far it lies along the viewing direction, on any scale
 */
public record Homogeneous(double x, double y, double w) {
    /** A point of the sheet. */
    public static Homogeneous of(SheetPoint point) {
        return new Homogeneous(point.x(), point.y(), 1);
    }

    /** Where it is seen; nothing at infinity or behind the viewer. */
    public Optional<SheetPoint> seen() {
        SheetPoint at = new SheetPoint(x / w, y / w);
        return w > 0 && Double.isFinite(at.x() + at.y()) ? Optional.of(at) : Optional.empty();
    }

    Homogeneous plus(Homogeneous other, double times) {
        return new Homogeneous(x + times * other.x, y + times * other.y, w + times * other.w);
    }
}
