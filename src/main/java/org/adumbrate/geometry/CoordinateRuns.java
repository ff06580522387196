package org.adumbrate.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Turns a path into runs of points joined by straight lines; curves stay within a tolerance. */
final class CoordinateRuns implements PieceVisitor {
    private final double tolerance;
    private final List<Coordinate[]> runs = new ArrayList<>();
    private final List<Coordinate> run = new ArrayList<>();

    private CoordinateRuns(double tolerance) {
        this.tolerance = tolerance;
    }

    /** The runs of a path, those that were closed with their first point once more at their end; none without length. */
    static List<Coordinate[]> of(VectorPath<?> path, double tolerance) {
        CoordinateRuns found = new CoordinateRuns(tolerance);
        path.pieces(found);
        return found.runs;
    }

    @Override
    public void begin(double x, double y) {
        run.add(new Coordinate(x, y));
    }

    @Override
    public void piece(PathPiece piece) {
        piece.chords(tolerance, (x0, y0, x1, y1) -> {
            if (x0 != x1 || y0 != y1) {
                run.add(new Coordinate(x1, y1));
            }
        });
    }

    @Override
    public void end(boolean closed) {
        if (run.size() > 1) {
            runs.add(run.toArray(new Coordinate[0]));
        }
        run.clear();
    }
}
