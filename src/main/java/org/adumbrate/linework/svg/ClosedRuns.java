package org.adumbrate.linework.svg;

import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** Picks the runs of a path that end where they began. */
final class ClosedRuns implements VectorPath.Visitor {
    private final VectorPath.Builder<PagePoint> kept = VectorPath.in(Space.PAGE);
    private VectorPath.Builder<PagePoint> run = VectorPath.in(Space.PAGE);
    private double startX;
    private double startY;
    private boolean closed;

    private ClosedRuns() {}

    static VectorPath<PagePoint> of(VectorPath<PagePoint> path) {
        ClosedRuns runs = new ClosedRuns();
        path.visit(runs);
        runs.end();
        return runs.kept.build();
    }

    @Override
    public void moveTo(double x, double y) {
        end();
        run.moveTo(x, y);
        startX = x;
        startY = y;
    }

    @Override
    public void lineTo(double x, double y) {
        run.lineTo(x, y);
        closed = x == startX && y == startY;
    }

    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
        run.curveTo(x1, y1, x2, y2, x, y);
        closed = x == startX && y == startY;
    }

    @Override
    public void close() {
        run.close();
        closed = true;
    }

    private void end() {
        if (closed) {
            run.build().visit(kept);
        }
        run = VectorPath.in(Space.PAGE);
        closed = false;
    }
}
