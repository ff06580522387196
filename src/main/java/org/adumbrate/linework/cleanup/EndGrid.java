package org.adumbrate.linework.cleanup;

/** Finds ends of pieces that lie near each other by a grid of square cells no smaller than the reach. */
final class EndGrid {
    private static final double LEAST_CELL_MM = 0.05;

    /** At a place where still more ends meet, such as the heart of a rosette, some pairs are not looked at. */
    private static final int MOST_COMPANIONS = 400;

    /** Told of two ends of which the first has the lower number. */
    interface Pair {
        void meet(int a, int b);
    }

    private final LinePieces pieces;
    private final double reach;
    private double left = Double.POSITIVE_INFINITY;
    private double top = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double foot = Double.NEGATIVE_INFINITY;
    private double cell;
    private int columns;
    private int[] starts;
    private int[] members;

    private EndGrid(LinePieces pieces, double reach) {
        this.pieces = pieces;
        this.reach = reach;
    }

    /** Tells of all pairs of ends of the pieces that are there which lie within reach of each other. */
    static void pairs(LinePieces pieces, double reach, Pair each) {
        EndGrid grid = new EndGrid(pieces, reach);
        if (grid.fill()) {
            for (int end = 0; end < 2 * pieces.size(); end++) {
                if (!pieces.isGone(end >> 1)) {
                    grid.companions(end, each);
                }
            }
        }
    }

    private boolean fill() {
        int count = 0;
        for (int end = 0; end < 2 * pieces.size(); end++) {
            if (!pieces.isGone(end >> 1)) {
                left = Math.min(left, pieces.x(end));
                top = Math.min(top, pieces.y(end));
                right = Math.max(right, pieces.x(end));
                foot = Math.max(foot, pieces.y(end));
                count++;
            }
        }
        if (count == 0) {
            return false;
        }
        double across = Math.max(right - left, foot - top);
        cell = Math.max(Math.max(LEAST_CELL_MM, reach), across / Math.sqrt(count));
        columns = 1 + (int) ((right - left) / cell);
        int rows = 1 + (int) ((foot - top) / cell);
        starts = new int[columns * rows + 1];
        members = new int[count];
        sort();
        return true;
    }

    private void sort() {
        for (int end = 0; end < 2 * pieces.size(); end++) {
            if (!pieces.isGone(end >> 1)) {
                starts[cellOf(end) + 1]++;
            }
        }
        for (int c = 1; c < starts.length; c++) {
            starts[c] += starts[c - 1];
        }
        int[] next = starts.clone();
        for (int end = 0; end < 2 * pieces.size(); end++) {
            if (!pieces.isGone(end >> 1)) {
                members[next[cellOf(end)]++] = end;
            }
        }
    }

    private int cellOf(int end) {
        return row(pieces.y(end)) * columns + column(pieces.x(end));
    }

    private int column(double x) {
        return Math.max(0, Math.min(columns - 1, (int) ((x - left) / cell)));
    }

    private int row(double y) {
        return Math.max(0, Math.min((starts.length - 1) / columns - 1, (int) ((y - top) / cell)));
    }

    private void companions(int end, Pair each) {
        double x = pieces.x(end);
        double y = pieces.y(end);
        int companions = 0;
        for (int row = row(y - reach); row <= row(y + reach); row++) {
            int first = starts[row * columns + column(x - reach)];
            int last = starts[row * columns + column(x + reach) + 1];
            for (int m = first; m < last && companions < MOST_COMPANIONS; m++) {
                int other = members[m];
                if (other > end && pieces.distance(end, other) <= reach) {
                    companions++;
                    each.meet(end, other);
                }
            }
        }
    }
}
