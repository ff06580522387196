package org.adumbrate.linework.clip;

import java.util.Arrays;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.VectorPath;

/** Turns an outline into straight edges, every run closed; curves to within a few micrometres. */
final class OutlineEdges implements PieceVisitor {
    /** How far a curve may lie from its chord, in mm: a twentieth of a printed dot at 600 dpi. */
    private static final double FLATNESS = 0.002;

    private final int mostEdges;
    private double[] edges = new double[32];
    private int count;
    private double startX;
    private double startY;
    private double x;
    private double y;

    private OutlineEdges(int mostEdges) {
        this.mostEdges = mostEdges;
    }

    /**
     * The edges of an outline as x, y of one end and of the other, four numbers each.
     *
     * @throws TooIntricateException if the outline has more than so many edges
     */
    static double[] of(VectorPath<?> outline, int mostEdges) {
        OutlineEdges found = new OutlineEdges(mostEdges);
        outline.pieces(found);
        return Arrays.copyOf(found.edges, found.count);
    }

    @Override
    public void begin(double atX, double atY) {
        startX = atX;
        startY = atY;
    }

    @Override
    public void piece(PathPiece piece) {
        piece.chords(FLATNESS, this::edge);
        x = piece.x3();
        y = piece.y3();
    }

    @Override
    public void end(boolean closed) {
        edge(x, y, startX, startY);
    }

    private void edge(double fromX, double fromY, double toX, double toY) {
        if (fromX == toX && fromY == toY) {
            return;
        }
        if (count == edges.length) {
            if (count > 4 * mostEdges) {
                throw new TooIntricateException("has an outline of more than " + mostEdges + " edges");
            }
            edges = Arrays.copyOf(edges, 2 * count);
        }
        edges[count++] = fromX;
        edges[count++] = fromY;
        edges[count++] = toX;
        edges[count++] = toY;
    }
}
