package org.adumbrate.geometry;

/**
 * One straight or cubic piece of a path; places along it run from 0 to 1.
 *
 * @param x0 where it begins
 * @param x1 its first control point, if it is curved; where it begins, if it is straight
 * @param x2 its second control point, if it is curved; where it ends, if it is straight
 * @param x3 where it ends
 * @param straight whether it is straight
 */
public record PathPiece(
        double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3, boolean straight) {
    /** A straight piece. */
    public static PathPiece line(double x0, double y0, double x3, double y3) {
        return new PathPiece(x0, y0, x0, y0, x3, y3, x3, y3, true);
    }

    /** A cubic Bezier curve. */
    public static PathPiece curve(
            double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3) {
        return new PathPiece(x0, y0, x1, y1, x2, y2, x3, y3, false);
    }

    /** The x of a place. */
    public double xAt(double t) {
        return straight ? mix(x0, x3, t) : at(x0, x1, x2, x3, t);
    }

    /** The y of a place. */
    public double yAt(double t) {
        return straight ? mix(y0, y3, t) : at(y0, y1, y2, y3, t);
    }

    /** How far it is from end to end by way of its control points: its length if it is straight, else no less than that. */
    public double reach() {
        return straight
                ? Math.hypot(x3 - x0, y3 - y0)
                : Math.hypot(x1 - x0, y1 - y0) + Math.hypot(x2 - x1, y2 - y1) + Math.hypot(x3 - x2, y3 - y2);
    }

    /** The part between two places. */
    public PathPiece part(double from, double to) {
        if (from == 0 && to == 1) {
            return this;
        }
        if (straight) {
            return line(xAt(from), yAt(from), xAt(to), yAt(to));
        }
        return curve(
                xAt(from), yAt(from),
                blossom(x0, x1, x2, x3, from, from, to), blossom(y0, y1, y2, y3, from, from, to),
                blossom(x0, x1, x2, x3, from, to, to), blossom(y0, y1, y2, y3, from, to, to),
                xAt(to), yAt(to));
    }

    /** Hands out straight lines along it that no point of it lies farther from than the tolerance; itself if it is straight. */
    public void chords(double tolerance, ChordVisitor visitor) {
        if (straight) {
            visitor.chord(x0, y0, x3, y3);
        } else {
            Flattener.chords(x0, y0, x1, y1, x2, y2, x3, y3, tolerance, visitor);
        }
    }

    /** Goes along it from where a path stands. */
    public void drawOn(VectorPath.Visitor path) {
        if (straight) {
            path.lineTo(x3, y3);
        } else {
            path.curveTo(x1, y1, x2, y2, x3, y3);
        }
    }

    private static double mix(double from, double to, double t) {
        return t == 1 ? to : from + t * (to - from);
    }

    /**
     * The value of a cubic polynomial in Bernstein form, such as one coordinate of a curve or its distance from a line.
     *
     * @param t a place from 0 to 1
     */
    public static double at(double d0, double d1, double d2, double d3, double t) {
        return t == 0 ? d0 : t == 1 ? d3 : blossom(d0, d1, d2, d3, t, t, t);
    }

    /**
     * The blossom (polar form) of a cubic: de Casteljau's construction with a place of its own for each step. The control
     * values of the part from s to t are the blossom at (s,s,s), (s,s,t), (s,t,t) and (t,t,t) (Ramshaw, "Blossoms are polar
     * forms", 1989).
     */
    private static double blossom(double d0, double d1, double d2, double d3, double r, double s, double t) {
        double a = d0 + r * (d1 - d0);
        double b = d1 + r * (d2 - d1);
        double c = d2 + r * (d3 - d2);
        double ab = a + s * (b - a);
        double bc = b + s * (c - b);
        return ab + t * (bc - ab);
    }
}
