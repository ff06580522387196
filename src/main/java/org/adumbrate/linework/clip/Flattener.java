package org.adumbrate.linework.clip;

import java.util.Arrays;
import org.adumbrate.geometry.VectorPath;

/** Turns an outline into straight edges, every run closed; curves to within a few micrometres. */
final class Flattener implements VectorPath.Visitor {
    /** How far a chord may lie from its curve, in mm: a twentieth of a printed dot at 600 dpi. */
    private static final double FLATNESS = 0.002;

    private static final int MOST_CHORDS = 2000;
    private static final int MOST_EDGES = 200_000;

    private double[] edges = new double[32];
    private int count;
    private double startX;
    private double startY;
    private double x;
    private double y;

    /**
     * The edges of an outline as x, y of one end and of the other, four numbers each.
     *
     * @throws TooIntricateException if the outline has too many edges to clip by
     */
    static double[] edges(VectorPath<?> outline) {
        Flattener flattener = new Flattener();
        outline.visit(flattener);
        flattener.close();
        return Arrays.copyOf(flattener.edges, flattener.count);
    }

    @Override
    public void moveTo(double toX, double toY) {
        close();
        startX = x = toX;
        startY = y = toY;
    }

    @Override
    public void lineTo(double toX, double toY) {
        if (toX != x || toY != y) {
            edge(toX, toY);
        }
    }

    /** In as many chords of equal steps as Wang's formula asks for (Goldman, "Pyramid algorithms", 2002, 5.6.3). */
    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        double bend = Math.max(
                Math.hypot(x - 2 * x1 + x2, y - 2 * y1 + y2), Math.hypot(x1 - 2 * x2 + toX, y1 - 2 * y2 + toY));
        int chords = (int) Math.max(1, Math.min(MOST_CHORDS, Math.ceil(Math.sqrt(0.75 * bend / FLATNESS))));
        Piece curve = Piece.curve(x, y, x1, y1, x2, y2, toX, toY);
        for (int k = 1; k <= chords; k++) {
            double t = (double) k / chords;
            lineTo(curve.xAt(t), curve.yAt(t));
        }
    }

    @Override
    public void close() {
        lineTo(startX, startY);
    }

    private void edge(double toX, double toY) {
        if (count == edges.length) {
            if (count > 4 * MOST_EDGES) {
                throw new TooIntricateException("has a clip of more than " + MOST_EDGES + " edges");
            }
            edges = Arrays.copyOf(edges, 2 * count);
        }
        edges[count++] = x;
        edges[count++] = y;
        edges[count++] = x = toX;
        edges[count++] = y = toY;
    }
}
