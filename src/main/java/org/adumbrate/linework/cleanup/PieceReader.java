package org.adumbrate.linework.cleanup;

import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/** Takes paths apart. Curves that run straight become straight pieces; steps of no length are left out. */
final class PieceReader implements VectorPath.Visitor {
    /** In mm: a curve whose control points lie no farther from its chord is straight. */
    private static final double FLAT_MM = 0.001;

    private final Pieces pieces;
    private final boolean keepsDots;
    private double startX;
    private double startY;
    private double x;
    private double y;
    private boolean stepped;
    private boolean moved;
    private int dots;

    private PieceReader(Pieces pieces, boolean keepsDots) {
        this.pieces = pieces;
        this.keepsDots = keepsDots;
    }

    /**
     * Reads paths into pieces.
     *
     * @param keepsDots true to keep runs that have no length as pieces without one
     * @return how many such runs there are
     */
    static int read(List<VectorPath<SheetPoint>> paths, Pieces into, boolean keepsDots) {
        PieceReader reader = new PieceReader(into, keepsDots);
        for (VectorPath<SheetPoint> path : paths) {
            path.visit(reader);
            reader.endRun();
        }
        return reader.dots;
    }

    @Override
    public void moveTo(double toX, double toY) {
        endRun();
        startX = toX;
        startY = toY;
        x = toX;
        y = toY;
    }

    @Override
    public void lineTo(double toX, double toY) {
        stepped = true;
        if (toX != x || toY != y) {
            pieces.line(x, y, toX, toY);
            goTo(toX, toY);
        }
    }

    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        if (isStraight(x1, y1, toX, toY) && isStraight(x2, y2, toX, toY)) {
            lineTo(toX, toY);
            return;
        }
        stepped = true;
        pieces.curve(x, y, new double[] {x1, y1, x2, y2}, toX, toY);
        goTo(toX, toY);
    }

    @Override
    public void close() {
        lineTo(startX, startY);
    }

    private void goTo(double toX, double toY) {
        moved = true;
        x = toX;
        y = toY;
    }

    private void endRun() {
        if (stepped && !moved) {
            dots++;
            if (keepsDots) {
                pieces.line(x, y, x, y);
            }
        }
        stepped = false;
        moved = false;
    }

    private boolean isStraight(double px, double py, double toX, double toY) {
        double length = Math.hypot(toX - x, toY - y);
        if (length == 0) {
            return px == x && py == y;
        }
        double ux = (toX - x) / length;
        double uy = (toY - y) / length;
        double along = ux * (px - x) + uy * (py - y);
        double across = ux * (py - y) - uy * (px - x);
        return Math.abs(across) <= FLAT_MM && along >= 0 && along <= length;
    }
}
