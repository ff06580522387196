package org.adumbrate.linework.pens;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;

/** Measures which way pieces of paths run. Curves run neither way. */
final class Directions implements VectorPath.Visitor {
    /** The tangent of 2 degrees: exporters and hands are that exact. */
    private static final double SLACK = 0.035;

    private final List<Upright> uprights = new ArrayList<>();
    private double startX;
    private double startY;
    private double x;
    private double y;
    private double lengthMm;
    private double uprightMm;
    private double levelMm;

    void add(VectorPath<PagePoint> path) {
        double before = uprightMm;
        path.visit(this);
        lengthMm += path.length();
        if (path.segments() == 1 && uprightMm > before) {
            uprights.add(new Upright(Math.max(startY, y), Math.abs(y - startY)));
        }
    }

    double lengthMm() {
        return lengthMm;
    }

    double uprightMm() {
        return uprightMm;
    }

    double levelMm() {
        return levelMm;
    }

    List<Upright> uprights() {
        return List.copyOf(uprights);
    }

    @Override
    public void moveTo(double toX, double toY) {
        startX = toX;
        startY = toY;
        x = toX;
        y = toY;
    }

    @Override
    public void lineTo(double toX, double toY) {
        double across = Math.abs(toX - x);
        double down = Math.abs(toY - y);
        uprightMm += across <= SLACK * down ? down : 0;
        levelMm += down <= SLACK * across ? across : 0;
        x = toX;
        y = toY;
    }

    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        x = toX;
        y = toY;
    }

    @Override
    public void close() {
        lineTo(startX, startY);
    }
}
