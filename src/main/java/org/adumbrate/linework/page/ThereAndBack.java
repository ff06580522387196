package org.adumbrate.linework.page;

import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** Draws a straight line once that a file draws there and back, as a closed path of two points. */
final class ThereAndBack implements VectorPath.Visitor {
    private final VectorPath.Builder<PagePoint> once = VectorPath.in(Space.PAGE);
    private VectorPath.Builder<PagePoint> run = VectorPath.in(Space.PAGE);
    private int steps;
    private double startX;
    private double startY;
    private double farX;
    private double farY;
    private boolean back;
    private boolean changed;

    private ThereAndBack() {}

    /** The path with such lines drawn once; itself if there is none. */
    static VectorPath<PagePoint> once(VectorPath<PagePoint> path) {
        int segments = path.segments();
        if (segments < 2 || (segments > 3 && path.runs() == 1)) {
            return path;
        }
        ThereAndBack lines = new ThereAndBack();
        path.visit(lines);
        lines.endRun();
        return lines.changed ? lines.once.build() : path;
    }

    @Override
    public void moveTo(double x, double y) {
        endRun();
        run.moveTo(x, y);
        startX = x;
        startY = y;
    }

    @Override
    public void lineTo(double x, double y) {
        run.lineTo(x, y);
        steps++;
        if (steps == 1) {
            farX = x;
            farY = y;
        } else {
            back = steps == 2 && x == startX && y == startY;
        }
    }

    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
        run.curveTo(x1, y1, x2, y2, x, y);
        steps += 3;
        back = false;
    }

    @Override
    public void close() {
        run.close();
        back |= steps == 1;
    }

    private void endRun() {
        if (back && (farX != startX || farY != startY)) {
            once.moveTo(startX, startY);
            once.lineTo(farX, farY);
            changed = true;
        } else {
            run.build().visit(once);
        }
        run = VectorPath.in(Space.PAGE);
        steps = 0;
        back = false;
    }
}
