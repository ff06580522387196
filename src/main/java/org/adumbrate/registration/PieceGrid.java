package org.adumbrate.registration;

import java.util.Arrays;

/** Straight pieces sorted into square cells, to find those that lie near a point. */
final class PieceGrid {
    private final double[] pieces;
    private final double cell;
    private final double left;
    private final double top;
    private final int columns;
    private final int rows;
    private final int[] starts;
    private final int[] members;

    /**
     * @param pieces x0 y0 x1 y1 in a row
     * @param cell side of a cell, in the unit of the pieces
     */
    PieceGrid(double[] pieces, double cell) {
        this.pieces = pieces;
        double minX = Double.MAX_VALUE;
        double minY = Double.MAX_VALUE;
        double maxX = -Double.MAX_VALUE;
        double maxY = -Double.MAX_VALUE;
        for (int k = 0; k < pieces.length; k += 2) {
            minX = Math.min(minX, pieces[k]);
            maxX = Math.max(maxX, pieces[k]);
            minY = Math.min(minY, pieces[k + 1]);
            maxY = Math.max(maxY, pieces[k + 1]);
        }
        // However far the pieces are strewn, the table stays small.
        this.cell = Math.max(cell, Math.max(maxX - minX, maxY - minY) / 1000);
        left = minX;
        top = minY;
        columns = pieces.length == 0 ? 1 : 1 + (int) ((maxX - minX) / this.cell);
        rows = pieces.length == 0 ? 1 : 1 + (int) ((maxY - minY) / this.cell);
        starts = new int[columns * rows + 1];
        for (int s = 0; s < pieces.length; s += 4) {
            forEachCell(s, at -> starts[at + 1]++);
        }
        for (int k = 1; k < starts.length; k++) {
            starts[k] += starts[k - 1];
        }
        members = new int[starts[starts.length - 1]];
        int[] next = Arrays.copyOf(starts, starts.length);
        for (int s = 0; s < pieces.length; s += 4) {
            int piece = s;
            forEachCell(s, at -> members[next[at]++] = piece);
        }
    }

    /** Receives the index of a piece's first coordinate, or of a cell. */
    interface Visitor {
        void visit(int index);
    }

    /** Visits the pieces whose cells the box touches; some more than once. */
    void near(double x0, double y0, double x1, double y1, Visitor visitor) {
        int c0 = column(Math.min(x0, x1));
        int c1 = column(Math.max(x0, x1));
        int r1 = row(Math.max(y0, y1));
        for (int r = row(Math.min(y0, y1)); r <= r1; r++) {
            for (int k = starts[r * columns + c0]; k < starts[r * columns + c1 + 1]; k++) {
                visitor.visit(members[k]);
            }
        }
    }

    /** Walks along a piece in steps of half a cell, which leaves out no more than the corner of a cell. */
    private void forEachCell(int s, Visitor visitor) {
        double dx = pieces[s + 2] - pieces[s];
        double dy = pieces[s + 3] - pieces[s + 1];
        int steps = 1 + (int) (Math.hypot(dx, dy) / cell * 2);
        int last = -1;
        for (int k = 0; k <= steps; k++) {
            int at = row(pieces[s + 1] + dy * k / steps) * columns + column(pieces[s] + dx * k / steps);
            if (at != last) {
                visitor.visit(at);
                last = at;
            }
        }
    }

    private int column(double x) {
        return (int) Math.max(0, Math.min(columns - 1, (x - left) / cell));
    }

    private int row(double y) {
        return (int) Math.max(0, Math.min(rows - 1, (y - top) / cell));
    }
}
