package org.adumbrate.linework.profile;

import org.adumbrate.geometry.VectorPath;

/** A piece of a run, straight or a cubic curve. */
final class Piece {
    /** In mm: depth is looked up once every so often. */
    private static final double STEP_MM = 0.5;

    private static final int MOST_STEPS = 20_000;

    private final double[] points;

    /**
     * A piece.
     *
     * @param points its ends and, between them, the control points if it is a curve: x, y, x, y ...
     */
    Piece(double... points) {
        this.points = points.clone();
    }

    /** In how many equal steps of its parameter depth is looked up. */
    int steps() {
        double length = 0;
        for (int k = 2; k < points.length; k += 2) {
            length += Math.hypot(points[k] - points[k - 2], points[k + 1] - points[k - 1]);
        }
        return (int) Math.max(1, Math.min(MOST_STEPS, Math.ceil(length / STEP_MM)));
    }

    /** The x, or with 1 the y, of a point on it by its parameter. */
    double at(double t, int axis) {
        if (points.length == 4) {
            return points[axis] + t * (points[2 + axis] - points[axis]);
        }
        double s = 1 - t;
        return s * s * s * points[axis]
                + 3 * s * s * t * points[2 + axis]
                + 3 * s * t * t * points[4 + axis]
                + t * t * t * points[6 + axis];
    }

    /** The part between two parameters, by de Casteljau's construction. */
    Piece part(double from, double to) {
        double[] head = to == 1 ? points : half(points, to, false);
        return from == 0 ? new Piece(head) : new Piece(half(head, from / to, true));
    }

    private static double[] half(double[] points, double t, boolean last) {
        double[] level = points.clone();
        double[] half = new double[points.length];
        int count = points.length / 2;
        for (int n = 0; n < count; n++) {
            int from = last ? count - 1 - n : 0;
            int to = last ? count - 1 - n : n;
            half[2 * to] = level[2 * from];
            half[2 * to + 1] = level[2 * from + 1];
            for (int k = 0; k < 2 * (count - 1 - n); k++) {
                level[k] += t * (level[k + 2] - level[k]);
            }
        }
        return half;
    }

    /** Goes along it. */
    void draw(VectorPath.Visitor to) {
        if (points.length == 4) {
            to.lineTo(points[2], points[3]);
        } else {
            to.curveTo(points[2], points[3], points[4], points[5], points[6], points[7]);
        }
    }
}
