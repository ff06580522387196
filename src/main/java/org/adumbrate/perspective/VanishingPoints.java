package org.adumbrate.perspective;

import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;

/**
 * The two points of the classical construction of shadows: on level ground all shadows of uprights run toward one point of
 * the horizon, and all rays toward one point straight above or below it (the sun itself where it stands before the viewer, the
 * point opposite to it where it stands behind). With the calibration K and the rotation R of a view and the unit vector S
 * toward the sun they are
 *
 * <pre>
 *   shadow = K R (-S.x, -S.y, 0)     ray = K R (-S)
 * </pre>
 *
 * so that the sun before, behind and beside the viewer are one case; beside, both lie at infinity. The two share one scale.
 *
 * @param shadow toward which shadows on level ground fall
 * @param ray toward which the light falls
 */
public record VanishingPoints(Homogeneous shadow, Homogeneous ray) {
    /**
     * The points of a view.
     *
     * @throws IllegalArgumentException if the sun is not up
     */
    public static VanishingPoints of(View view, SunDirection sun) {
        if (!(sun.z() > 0)) {
            throw new IllegalArgumentException("a sun below the horizon casts no shadows");
        }
        double across = sun.y() * Math.sin(view.turn()) - sun.x() * Math.cos(view.turn());
        double away = -sun.x() * Math.sin(view.turn()) - sun.y() * Math.cos(view.turn());
        SheetPoint c = view.principal();
        Homogeneous shadow = new Homogeneous(c.x() * away + view.focalMm() * across, c.y() * away, away);
        return new VanishingPoints(shadow, shadow.plus(new Homogeneous(0, view.focalMm(), 0), sun.z()));
    }

    /**
     * Where the shadow of an upright's head falls on the level on which the upright stands: where the line from the foot
     * toward {@code shadow} meets the line from the head toward {@code ray}, (foot × shadow) × (head × ray). These two lines
     * are one and the same if the upright stands straight between the viewer and the sun; the length of the shadow is
     * therefore measured along the upright, which has no such exception: the upright ends where foot + t (shadow - ray) is
     * seen at the head, and the shadow at foot + t shadow.
     *
     * @param foot where it stands
     * @param head its upper end
     * @return nothing if the shadow's tip is not seen because it falls behind the viewer
     */
    public Optional<SheetPoint> shadowTip(SheetPoint foot, SheetPoint head) {
        Homogeneous up = shadow.plus(ray, -1);
        // the picture of foot + t up moves along a line: at once by this, in all by s = t / (1 + t up.w) times as much
        double x = up.x() - up.w() * foot.x();
        double y = up.y() - up.w() * foot.y();
        double s = ((head.x() - foot.x()) * x + (head.y() - foot.y()) * y) / (x * x + y * y);
        double t = s / (1 - s * up.w());
        return Homogeneous.of(foot).plus(shadow, t).seen();
    }
}
