package org.adumbrate.linework.clip;

import org.adumbrate.geometry.VectorPath;

/** One straight or cubic piece of a path; places along it run from 0 to 1. A straight one has no control points of its own. */
record Piece(double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3, boolean straight) {
    static Piece line(double x0, double y0, double x3, double y3) {
        return new Piece(x0, y0, x0, y0, x3, y3, x3, y3, true);
    }

    static Piece curve(double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3) {
        return new Piece(x0, y0, x1, y1, x2, y2, x3, y3, false);
    }

    Bounds bounds() {
        Bounds bounds = new Bounds();
        bounds.moveTo(x0, y0);
        bounds.curveTo(x1, y1, x2, y2, x3, y3);
        return bounds;
    }

    double xAt(double t) {
        return straight ? mix(x0, x3, t) : Cubic.at(x0, x1, x2, x3, t);
    }

    double yAt(double t) {
        return straight ? mix(y0, y3, t) : Cubic.at(y0, y1, y2, y3, t);
    }

    /** Notes where the piece passes from one side of the line {@code a·x + b·y = c} to the other. */
    void crossings(double a, double b, double c, Splits splits) {
        double d0 = a * x0 + b * y0 - c;
        double d3 = a * x3 + b * y3 - c;
        if (straight) {
            if (d0 < 0 != d3 < 0) {
                splits.add(d0 / (d0 - d3));
            }
        } else {
            Cubic.signChanges(d0, a * x1 + b * y1 - c, a * x2 + b * y2 - c, d3, splits);
        }
    }

    /** The part between two places; by de Casteljau's construction for a curve. */
    Piece part(double from, double to) {
        if (from == 0 && to == 1) {
            return this;
        }
        if (straight) {
            return line(xAt(from), yAt(from), xAt(to), yAt(to));
        }
        return curve(
                xAt(from), yAt(from),
                Cubic.blossom(x0, x1, x2, x3, from, from, to), Cubic.blossom(y0, y1, y2, y3, from, from, to),
                Cubic.blossom(x0, x1, x2, x3, from, to, to), Cubic.blossom(y0, y1, y2, y3, from, to, to),
                xAt(to), yAt(to));
    }

    /** Draws the piece from where the path stands. */
    void drawOn(VectorPath.Visitor path) {
        if (straight) {
            path.lineTo(x3, y3);
        } else {
            path.curveTo(x1, y1, x2, y2, x3, y3);
        }
    }

    private static double mix(double from, double to, double t) {
        return t == 1 ? to : from + t * (to - from);
    }
}
