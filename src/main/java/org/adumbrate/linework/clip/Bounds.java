package org.adumbrate.linework.clip;

import org.adumbrate.geometry.VectorPath;

/** The upright box around everything it visits; around control points too, so it may be larger than a curve. */
final class Bounds implements VectorPath.Visitor {
    private double left = Double.POSITIVE_INFINITY;
    private double top = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double bottom = Double.NEGATIVE_INFINITY;

    static Bounds of(VectorPath<?> path) {
        Bounds bounds = new Bounds();
        path.visit(bounds);
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

    @Override
    public void moveTo(double x, double y) {
        add(x, y);
    }

    @Override
    public void lineTo(double x, double y) {
        add(x, y);
    }

    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
        add(x1, y1);
        add(x2, y2);
        add(x, y);
    }

    @Override
    public void close() {
        // goes back to a point that is in the box already
    }
}
