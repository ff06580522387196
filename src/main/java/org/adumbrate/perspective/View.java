package org.adumbrate.perspective;

import java.util.Optional;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.SheetPoint;

/**
 * A pinhole view with an upright picture plane, one-point or two-point, drawn on the sheet. Model points are told from the
 * spot at elevation 0 below the eye, along the model's own axes: where the model's origin lies matters to nobody here. With
 * forward F = (sin turn, cos turn, 0), right R = (cos turn, -sin turn, 0) and P counted from the eye,
 *
 * <pre>
 *   depth = P·F     x = principal.x + focal P·R / depth     y = principal.y - focal P.z / depth
 * </pre>
 *
 * (Hartley and Zisserman, "Multiple View Geometry", 2nd ed. 2004, chapter 6, with the sheet's y down.)
 *
 * @param focalMm the focal length at sheet scale in mm, above zero
 * @param principal where the viewing direction meets the sheet; its y is the horizon
 * @param eyeHeightM the eye's height above elevation 0 in metres
 * @param turn of the viewing direction in radians, clockwise from the model's +Y, seen from above
 */
public record View(double focalMm, SheetPoint principal, double eyeHeightM, double turn) {
    /** @throws IllegalArgumentException if the focal length is not above zero or a number is not finite */
    public View {
        if (!(focalMm > 0 && Double.isFinite(focalMm + eyeHeightM + turn + principal.x() + principal.y()))) {
            throw new IllegalArgumentException("a view needs a focal length above zero and finite numbers");
        }
    }

    /** The sheet y of the horizon, in mm. */
    public double horizonMm() {
        return principal.y();
    }

    /** How far a point lies from the eye along the viewing direction, in metres; negative behind the viewer. */
    public double depth(ModelPoint p) {
        return p.x() * Math.sin(turn) + p.y() * Math.cos(turn);
    }

    /** Where a point is seen; nothing if it does not lie before the viewer. */
    public Optional<SheetPoint> project(ModelPoint p) {
        double depth = depth(p);
        if (!(depth > 0)) {
            return Optional.empty();
        }
        double scale = focalMm / depth;
        double across = p.x() * Math.cos(turn) - p.y() * Math.sin(turn);
        return Optional.of(
                new SheetPoint(principal.x() + scale * across, principal.y() - scale * (p.z() - eyeHeightM)));
    }

    /** The point that is seen at a place on the sheet at a depth in metres. */
    public ModelPoint at(SheetPoint seen, double depth) {
        double across = (seen.x() - principal.x()) * depth / focalMm;
        double up = (principal.y() - seen.y()) * depth / focalMm;
        return new ModelPoint(
                across * Math.cos(turn) + depth * Math.sin(turn),
                depth * Math.cos(turn) - across * Math.sin(turn),
                eyeHeightM + up);
    }

    /** The point of a level plane that is seen at a place; nothing if the plane is not seen there. */
    public Optional<ModelPoint> onLevel(SheetPoint seen, double elevationM) {
        double depth = focalMm * (eyeHeightM - elevationM) / (seen.y() - principal.y());
        return depth > 0 && Double.isFinite(depth) ? Optional.of(at(seen, depth)) : Optional.empty();
    }

    /** How long a metre parallel to the picture is at a depth, in mm of the sheet. */
    public double scaleAt(double depth) {
        return focalMm / depth;
    }
}
