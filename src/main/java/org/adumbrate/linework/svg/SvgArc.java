package org.adumbrate.linework.svg;

import org.adumbrate.linework.page.PathTracer;

/** Elliptical arcs as cubic curves. */
final class SvgArc {
    /** A curve for each eighth of a turn strays from its arc by less than five millionths of the radius. */
    private static final double STEP = Math.PI / 4;

    private SvgArc() {}

    /**
     * Draws an arc from where the pen stands to (x, y): endpoint to centre form by SVG 1.1, appendix F.6.5, with radii
     * that are too small scaled up by F.6.6.
     *
     * @param turn the ellipse's own turn, in radians, from the x axis towards the y axis
     */
    static void draw(
            PathTracer pen, double rx, double ry, double turn, boolean large, boolean sweep, double x, double y) {
        double halfX = (pen.x() - x) / 2;
        double halfY = (pen.y() - y) / 2;
        if (halfX == 0 && halfY == 0) {
            return;
        }
        if (rx == 0 || ry == 0) {
            pen.lineTo(x, y);
            return;
        }
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        // the start on the circle of radius 1 that the ellipse is a map of, the middle of the chord being the origin
        double ux = (cos * halfX + sin * halfY) / rx;
        double uy = (cos * halfY - sin * halfX) / ry;
        double distance = Math.hypot(ux, uy);
        double grown = Math.max(1, distance);
        ux /= grown;
        uy /= grown;
        double length = Math.min(1, distance);
        double offset = Math.sqrt(Math.max(0, 1 - length * length)) / length * (large == sweep ? -1 : 1);
        double centreX = offset * uy;
        double centreY = -offset * ux;
        double from = Math.atan2(uy - centreY, ux - centreX);
        double by = Math.atan2(-uy - centreY, -ux - centreX) - from;
        if (sweep && by < 0) {
            by += 2 * Math.PI;
        } else if (!sweep && by > 0) {
            by -= 2 * Math.PI;
        }
        Ellipse ellipse = new Ellipse(
                (pen.x() + x) / 2 + cos * rx * grown * centreX - sin * ry * grown * centreY,
                (pen.y() + y) / 2 + sin * rx * grown * centreX + cos * ry * grown * centreY,
                rx * grown,
                ry * grown,
                cos,
                sin);
        ellipse.draw(pen, from, by, x, y);
    }

    /** Draws a whole ellipse with upright axes, from its rightmost point towards the lowest, and closes it. */
    static void drawEllipse(PathTracer pen, double cx, double cy, double rx, double ry) {
        pen.moveTo(cx + rx, cy);
        new Ellipse(cx, cy, rx, ry, 1, 0).draw(pen, 0, 2 * Math.PI, cx + rx, cy);
        pen.close();
    }

    private record Ellipse(double cx, double cy, double rx, double ry, double cos, double sin) {
        /** Draws from an angle on by another, ending exactly at (endX, endY). */
        void draw(PathTracer pen, double from, double by, double endX, double endY) {
            int steps = (int) Math.max(1, Math.ceil(Math.abs(by) / STEP - 1e-9));
            double step = by / steps;
            double reach = 4 / 3.0 * Math.tan(step / 4);
            for (int k = 0; k < steps; k++) {
                double a = from + k * step;
                double b = a + step;
                double x1 = Math.cos(a) - reach * Math.sin(a);
                double y1 = Math.sin(a) + reach * Math.cos(a);
                double x2 = Math.cos(b) + reach * Math.sin(b);
                double y2 = Math.sin(b) - reach * Math.cos(b);
                boolean last = k == steps - 1;
                pen.curveTo(
                        x(x1, y1),
                        y(x1, y1),
                        x(x2, y2),
                        y(x2, y2),
                        last ? endX : x(Math.cos(b), Math.sin(b)),
                        last ? endY : y(Math.cos(b), Math.sin(b)));
            }
        }

        private double x(double u, double v) {
            return cx + cos * rx * u - sin * ry * v;
        }

        private double y(double u, double v) {
            return cy + sin * rx * u + cos * ry * v;
        }
    }
}
