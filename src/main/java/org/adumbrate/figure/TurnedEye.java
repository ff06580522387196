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

    /**
     * Where the edge of a level run of the figure is seen. With k = cos - tan sin, tan being that of the angle by which the run
     * lies aside of the viewing direction, its half width a is foreshortened to w = a k and its half depth b to d = b sin. It is
     * seen half as wide as (w^4 + d^4)^(1/4), the support function of a superellipse: a little turned it is the flat outline
     * turned, without the steps that an ellipse shows where runs part, and from the side it is as wide as it is deep. The edge
     * then lies a (w / half)^3 along the plane and b (d / half)^3 before it.
     *
     * @param centre u of the middle of the run
     * @param a half its width along the plane
     * @param b half its depth across the plane
     * @param h its height above the floor
     * @param side 1 for the right-hand edge as seen, -1 for the left-hand edge
     */
    SheetPoint edge(double centre, double a, double b, double h, int side) {
        double aside = perspective ? (across + centre * cos) / depthOf(centre * sin) : 0;
        double wide = a * (cos - aside * sin);
        double deep = b * sin;
        double half = Math.max(Math.sqrt(Math.hypot(wide * wide, deep * deep)), Double.MIN_NORMAL);
        double along = centre + side * a * cube(wide / half);
        double before = side * b * cube(deep / half);
        double there = depthOf(along * sin - before * cos);
        double right = across + along * cos + before * sin;
        return new SheetPoint(
                foot.x() + focalMm * (right / there - across / depth),
                foot.y() + focalMm * ((below - h) / there - below / depth));
    }

    private static double cube(double x) {
        return x * x * x;
    }

    private double depthOf(double behindFoot) {
        return perspective ? Math.max(NEAREST * depth, depth + behindFoot) : depth;
    }

    /** Whether the outline's right is seen on the right. */
    boolean keepsSides() {
        return cos - (perspective ? across / depth : 0) * sin >= 0;
    }
}
