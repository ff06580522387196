package org.adumbrate.linework.cleanup;

import java.util.List;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/** Takes paths apart. Curves that run straight become straight pieces; steps of no length are left out. */
final class PieceReader implements PieceVisitor {
    /** In mm: a curve whose control points lie no farther from its chord is straight. */
    private static final double FLAT_MM = 0.001;

    private final LinePieces pieces;
    private final boolean keepsDots;
    private double startX;
    private double startY;
    private boolean moved;
    private int dots;

    private PieceReader(LinePieces pieces, boolean keepsDots) {
        this.pieces = pieces;
        this.keepsDots = keepsDots;
    }

    /**
     * Reads paths into pieces.
     *
     * @param keepsDots true to keep runs that have no length as pieces without one
     * @return how many such runs there are
     */
    static int read(List<VectorPath<SheetPoint>> paths, LinePieces into, boolean keepsDots) {
        PieceReader reader = new PieceReader(into, keepsDots);
        for (VectorPath<SheetPoint> path : paths) {
            path.pieces(reader);
        }
        return reader.dots;
    }

    @Override
    public void begin(double x, double y) {
        moved = false;
        startX = x;
        startY = y;
    }

    @Override
    public void piece(PathPiece piece) {
        if (!isStraight(piece)) {
            pieces.curve(
                    piece.x0(),
                    piece.y0(),
                    new double[] {piece.x1(), piece.y1(), piece.x2(), piece.y2()},
                    piece.x3(),
                    piece.y3());
            moved = true;
        } else if (piece.x0() != piece.x3() || piece.y0() != piece.y3()) {
            pieces.line(piece.x0(), piece.y0(), piece.x3(), piece.y3());
            moved = true;
        }
    }

    @Override
    public void end(boolean closed) {
        if (!moved) {
            dots++;
            if (keepsDots) {
                pieces.line(startX, startY, startX, startY);
            }
        }
    }

    private static boolean isStraight(PathPiece piece) {
        return piece.straight()
                || (isOnChord(piece, piece.x1(), piece.y1()) && isOnChord(piece, piece.x2(), piece.y2()));
    }

    private static boolean isOnChord(PathPiece piece, double px, double py) {
        double length = Math.hypot(piece.x3() - piece.x0(), piece.y3() - piece.y0());
        if (length == 0) {
            return px == piece.x0() && py == piece.y0();
        }
        double ux = (piece.x3() - piece.x0()) / length;
        double uy = (piece.y3() - piece.y0()) / length;
        double along = ux * (px - piece.x0()) + uy * (py - piece.y0());
        double across = ux * (py - piece.y0()) - uy * (px - piece.x0());
        return Math.abs(across) <= FLAT_MM && along >= 0 && along <= length;
    }
}
