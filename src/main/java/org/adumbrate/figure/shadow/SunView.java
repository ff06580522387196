package org.adumbrate.figure.shadow;

import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.perspective.View;

/**
 * From the sheet to the {@link SunFrame}: a place (x, y) seen at depth d lies, from the eye, at d times a vector that changes
 * evenly over the sheet.
 */
final class SunView {
    private final double focal;
    private final double x0;
    private final double y0;
    private final Axes right;
    private final Axes forward;
    private final Axes upward;
    private final double sunRight;
    private final double sunForward;
    private final double sunUpward;
    private final Axes eye;

    private record Axes(double across, double up, double toward) {
        static Axes of(SunFrame sun, double x, double y, double z) {
            return new Axes(sun.across(x, y), sun.up(x, y, z), sun.toward(x, y, z));
        }
    }

    SunView(View view, SunFrame sun) {
        double c = Math.cos(view.turn());
        double s = Math.sin(view.turn());
        this.focal = view.focalMm();
        this.x0 = view.principal().x();
        this.y0 = view.principal().y();
        this.right = Axes.of(sun, c, -s, 0);
        this.forward = Axes.of(sun, s, c, 0);
        this.upward = Axes.of(sun, 0, 0, 1);
        this.sunRight = right.toward;
        this.sunForward = forward.toward;
        this.sunUpward = upward.toward;
        this.eye = Axes.of(sun, 0, 0, view.eyeHeightM());
    }

    /** A place in the sun's frame, counted from elevation 0 below the eye; filled anew for each. */
    static final class Place {
        double across;
        double up;
        double toward;
    }

    /** Finds the place that is seen at (x, y) of the sheet where 1 / depth is so much. */
    void find(double x, double y, double inverse, Place place) {
        double r = (x - x0) / focal;
        double u = (y0 - y) / focal;
        double depth = 1 / inverse;
        place.across = eye.across + depth * (forward.across + r * right.across + u * upward.across);
        place.up = eye.up + depth * (forward.up + r * right.up + u * upward.up);
        place.toward = eye.toward + depth * (forward.toward + r * right.toward + u * upward.toward);
    }

    /**
     * Whether a plane turns the side that is seen to the sun. With P from the eye, {@code 1/d = a + b x + c y} is the plane
     * {@code (b f) P·right + (a + b x0 + c y0) P·forward - (c f) P·up = 1}: its left side's vector points away from the eye.
     */
    boolean facesSun(double x, double y, Facet facet) {
        double atPrincipal = facet.inverse + facet.acrossSheet * (x0 - x) + facet.downSheet * (y0 - y);
        double away =
                facet.acrossSheet * focal * sunRight + atPrincipal * sunForward - facet.downSheet * focal * sunUpward;
        return away < 0;
    }

    /** A point in the sun's frame, counted from elevation 0 below the eye. */
    static Place of(ModelPoint p, SunFrame sun) {
        Place place = new Place();
        place.across = sun.across(p.x(), p.y());
        place.up = sun.up(p.x(), p.y(), p.z());
        place.toward = sun.toward(p.x(), p.y(), p.z());
        return place;
    }
}
