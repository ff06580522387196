package org.adumbrate.linework.clip;

import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.VectorPath;

/** The upright box around some points; of a path, around control points too, so it may be larger than a curve. */
final class Bounds {
    private double left = Double.POSITIVE_INFINITY;
    private double top = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double bottom = Double.NEGATIVE_INFINITY;

    static Bounds of(VectorPath<?> path) {
        Bounds bounds = new Bounds();
        path.extent().ifPresent(extent -> {
            bounds.add(extent.left(), extent.top());
            bounds.add(extent.right(), extent.bottom());
        });
        return bounds;
    }

    static Bounds of(PathPiece piece) {
        Bounds bounds = new Bounds();
        bounds.add(piece.x0(), piece.y0());
        bounds.add(piece.x1(), piece.y1());
        bounds.add(piece.x2(), piece.y2());
        bounds.add(piece.x3(), piece.y3());
        return bounds;
    }

    double left() {
        return left;
    }

    double top() {
        return top;
    }

    double right() {
        return right;
    }

    double bottom() {
        return bottom;
    }

    double middleX() {
        return (left + right) / 2;
    }

    double middleY() {
        return (top + bottom) / 2;
    }

    /** True unless a gap wider than the margin lies between this box and the other. */
    boolean meets(double otherLeft, double otherTop, double otherRight, double otherBottom, double margin) {
        return left <= otherRight + margin
                && right >= otherLeft - margin
                && top <= otherBottom + margin
                && bottom >= otherTop - margin;
    }

    void add(double x, double y) {
        left = Math.min(left, x);
        right = Math.max(right, x);
        top = Math.min(top, y);
        bottom = Math.max(bottom, y);
    }
}
