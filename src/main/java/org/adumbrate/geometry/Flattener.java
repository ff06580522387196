package org.adumbrate.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Turns a path into runs of points joined by straight lines; curves stay within a tolerance. */
final class Flattener implements VectorPath.Visitor {
    private static final int MOST_CHORDS = 2000;

    private final double tolerance;
    private final List<Coordinate[]> runs = new ArrayList<>();
    private List<Coordinate> run = new ArrayList<>();

    private Flattener(double tolerance) {
        this.tolerance = tolerance;
    }

    /** The runs of a path, those that were closed with their first point once more at their end. */
    static List<Coordinate[]> runs(VectorPath<?> path, double tolerance) {
        Flattener flattener = new Flattener(tolerance);
        path.visit(flattener);
        flattener.end();
        return flattener.runs;
    }

    @Override
    public void moveTo(double x, double y) {
        end();
        run.add(new Coordinate(x, y));
    }

    @Override
    public void lineTo(double x, double y) {
        Coordinate last = last();
        if (x != last.x || y != last.y) {
            run.add(new Coordinate(x, y));
        }
    }

    /** In as many chords of equal steps as Wang's formula asks for (Goldman, "Pyramid algorithms", 2002, 5.6.3). */
    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
        double x0 = last().x;
        double y0 = last().y;
        double bend =
                Math.max(Math.hypot(x0 - 2 * x1 + x2, y0 - 2 * y1 + y2), Math.hypot(x1 - 2 * x2 + x, y1 - 2 * y2 + y));
        int chords = (int) Math.max(1, Math.min(MOST_CHORDS, Math.ceil(Math.sqrt(0.75 * bend / tolerance))));
        for (int k = 1; k < chords; k++) {
            double t = (double) k / chords;
            double s = 1 - t;
            double a = s * s * s;
            double b = 3 * s * s * t;
            double c = 3 * s * t * t;
            double d = t * t * t;
            lineTo(a * x0 + b * x1 + c * x2 + d * x, a * y0 + b * y1 + c * y2 + d * y);
        }
        lineTo(x, y);
    }

    @Override
    public void close() {
        Coordinate first = run.get(0);
        lineTo(first.x, first.y);
        end();
        run.add(first);
    }

    private Coordinate last() {
        return run.get(run.size() - 1);
    }

    private void end() {
        if (run.size() > 1) {
            runs.add(run.toArray(new Coordinate[0]));
        }
        run = new ArrayList<>();
    }
}
