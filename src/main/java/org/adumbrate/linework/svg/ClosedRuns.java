package org.adumbrate.linework.svg;

import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** Picks the runs of a path that end where they began. */
final class ClosedRuns implements PieceVisitor {
    private final VectorPath.Builder<PagePoint> kept = VectorPath.in(Space.PAGE);
    private VectorPath.Builder<PagePoint> run = VectorPath.in(Space.PAGE);
    private double startX;
    private double startY;
    private boolean isBack;

    private ClosedRuns() {}

    static VectorPath<PagePoint> of(VectorPath<PagePoint> path) {
        ClosedRuns runs = new ClosedRuns();
        path.pieces(runs);
        return runs.kept.build();
    }

    @Override
    public void begin(double x, double y) {
        run = VectorPath.in(Space.PAGE);
        run.moveTo(x, y);
        startX = x;
        startY = y;
    }

    @Override
    public void piece(PathPiece piece) {
        piece.drawOn(run);
        isBack = piece.x3() == startX && piece.y3() == startY;
    }

    @Override
    public void closing(PathPiece piece) {
        run.close();
        isBack = true;
    }

    @Override
    public void end(boolean closed) {
        if (isBack) {
            run.build().visit(kept);
        }
    }
}
