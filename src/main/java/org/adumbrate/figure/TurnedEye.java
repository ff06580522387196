package org.adumbrate.figure;

import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.View;

/**
 * How a turned figure is seen. Lengths are in metres: u along the outline's plane from the foot, h above the floor.
 *
 * @param foot the foot on the sheet
 * @param focalMm the focal length in mm
 * @param across how far to the right of the viewing direction the foot is
 * @param below how far below the eye the foot is
 * @param depth of the foot along the viewing direction
 * @param cos of the turn against the picture plane
 * @param sin of the turn against the picture plane; the right-hand side of a figure recedes where it is positive
 * @param perspective whether what is nearer is drawn larger within the figure
 */
record TurnedEye(
        SheetPoint foot,
        double focalMm,
        double across,
        double below,
        double depth,
        double cos,
        double sin,
        boolean perspective) {

    /** No part of a figure is taken to be nearer than this share of its foot's depth. */
    private static final double NEAREST = 0.25;

    static TurnedEye in(View view, PlacedFigure figure, double turn) {
        ModelPoint model = figure.spot()
                .model()
                .orElseThrow(() -> new IllegalArgumentException("the figure's place in the model is not known"));
        SheetPoint foot = figure.spot().foot();
        double depth = view.depth(model);
        return new TurnedEye(
                foot,
                view.focalMm(),
                (foot.x() - view.principal().x()) * depth / view.focalMm(),
                view.eyeHeightM() - model.z(),
                depth,
                Math.cos(turn),
                Math.sin(turn),
                true);
    }

    /** From so far that everything of the figure has one scale. */
    static TurnedEye distant(PlacedFigure figure) {
        double turn = figure.stance().turn();
        Spot spot = figure.spot();
        return new TurnedEye(spot.foot(), spot.mmPerMetre(), 0, 0, 1, Math.cos(turn), Math.sin(turn), false);
    }

    /** The depth at u. */
    double depthAt(double u) {
        return perspective ? Math.max(NEAREST * depth, depth + u * sin) : depth;
    }

    /** Where u is seen across the sheet. */
    double x(double u) {
        double there = depthAt(u);
        return foot.x() + focalMm * ((across + u * cos) / there - across / depth);
    }

    /** Where a height over u is seen down the sheet. */
    double y(double u, double h) {
        double there = depthAt(u);
        return foot.y() + focalMm * ((below - h) / there - below / depth);
    }

    /**
     * Half the width in mm that an upright elliptical disc at u is seen with. A width along the plane is foreshortened by
     * cos - tan sin, tan being that of the angle by which the disc lies aside of the viewing direction; a depth by sin.
     */
    double halfWidth(double u, double alongHalf, double acrossHalf) {
        double there = depthAt(u);
        double aside = perspective ? (across + u * cos) / there : 0;
        return focalMm / there * Math.hypot(alongHalf * (cos - aside * sin), acrossHalf * sin);
    }

    /** Whether the outline's right is seen on the right. */
    boolean keepsSides() {
        return cos - (perspective ? across / depth : 0) * sin >= 0;
    }
}
