package org.adumbrate.linework.dashes;

import java.util.function.IntConsumer;

/** Finds ends of dashes ahead of another, by a grid of square cells, in whose order places and directions stand. */
final class EndCells {
    private static final double LEAST_CELL_MM = 1;

    /** Cells at most, on large sheets ... */
    private static final int MOST_CELLS = 1_000_000;

    /** ... and for each end, on empty ones. */
    private static final int CELLS_PER_END = 1;

    /** At a place where still more ends lie, such as that of a mark drawn over and over, some are not looked at. */
    private static final int MOST_COMPANIONS = 500;

    /** A line that falls less than this goes along the rows. */
    private static final double LEVEL = 0.05;

    private double left = Double.POSITIVE_INFINITY;
    private double top = Double.POSITIVE_INFINITY;
    private double cell = 1;
    private int columns = 1;
    private int rows;
    private double squareMm = 1;
    private int[] starts = {0};
    private final int[] members;

    /** As in {@link DashRuns}: x, y and direction of each. */
    private final double[] ends;

    EndCells(DashRuns runs, boolean[] used) {
        int count = 0;
        double right = Double.NEGATIVE_INFINITY;
        double foot = Double.NEGATIVE_INFINITY;
        for (int end = 0; end < 2 * runs.size(); end++) {
            if (!used[end >> 1]) {
                count++;
                left = Math.min(left, runs.x(end));
                top = Math.min(top, runs.y(end));
                right = Math.max(right, runs.x(end));
                foot = Math.max(foot, runs.y(end));
            }
        }
        members = new int[count];
        ends = new double[4 * count];
        if (count > 0) {
            double cells = Math.min(MOST_CELLS, (double) CELLS_PER_END * count);
            cell = Math.max(LEAST_CELL_MM, Math.max(right - left, foot - top) / Math.sqrt(cells));
            columns = 1 + (int) ((right - left) / cell);
            rows = 1 + (int) ((foot - top) / cell);
            squareMm = Math.ceil(right - left + LEAST_CELL_MM) * Math.ceil(foot - top + LEAST_CELL_MM);
            sort(runs, used);
        }
    }

    private void sort(DashRuns runs, boolean[] used) {
        starts = new int[columns * rows + 1];
        int[] cellOf = new int[2 * runs.size()];
        for (int end = 0; end < cellOf.length; end++) {
            cellOf[end] = row(runs.y(end)) * columns + column(runs.x(end));
            starts[cellOf[end] + 1] += used[end >> 1] ? 0 : 1;
        }
        for (int c = 1; c < starts.length; c++) {
            starts[c] += starts[c - 1];
        }
        int[] next = starts.clone();
        for (int end = 0; end < cellOf.length; end++) {
            if (!used[end >> 1]) {
                int at = next[cellOf[end]]++;
                members[at] = end;
                ends[4 * at] = runs.x(end);
                ends[4 * at + 1] = runs.y(end);
                ends[4 * at + 2] = runs.outX(end);
                ends[4 * at + 3] = runs.outY(end);
            }
        }
    }

    double endsPerSquareMm() {
        return members.length / squareMm;
    }

    private int column(double x) {
        return (int) Math.max(0, Math.min(columns - 1.0, (x - left) / cell));
    }

    private int row(double y) {
        return (int) Math.max(0, Math.min(rows - 1.0, (y - top) / cell));
    }

    /**
     * Hands out ends that a line may go on to: no farther than the reach, off the line by no more than a share of the way, and pointing
     * back as straight; and all that are as near as a contact.
     *
     * @param ux the direction in which the line goes on, with uy a unit vector
     */
    void ahead(double x, double y, double ux, double uy, double reach, double share, double contact, IntConsumer each) {
        double side = reach * share;
        double endY = y + uy * reach;
        int lastRow = row(Math.max(y, endY) + side * Math.abs(ux) + contact);
        int looked = 0;
        for (int row = row(Math.min(y, endY) - side * Math.abs(ux) - contact); row <= lastRow && row < rows; row++) {
            // the stretch of the line beside which the row's ends may lie
            double above = top + row * cell - side - contact - y;
            double below = above + cell + 2 * (side + contact);
            boolean level = Math.abs(uy) < LEVEL;
            double near = level ? 0 : Math.max(0, Math.min(above / uy, below / uy));
            double far = level ? reach : Math.min(reach, Math.max(above / uy, below / uy));
            double spread = share * far + contact;
            int first = starts[row * columns + column(x + Math.min(ux * near, ux * far) - spread)];
            int last = starts[row * columns + column(x + Math.max(ux * near, ux * far) + spread) + 1];
            for (int m = first; m < last && looked < MOST_COMPANIONS; m++) {
                looked++;
                double vx = ends[4 * m] - x;
                double vy = ends[4 * m + 1] - y;
                double ahead = ux * vx + uy * vy;
                boolean faces = ahead <= reach
                        && Math.abs(ux * vy - uy * vx) <= share * ahead
                        && Math.abs(ends[4 * m + 2] * vy - ends[4 * m + 3] * vx)
                                <= -share * (ends[4 * m + 2] * vx + ends[4 * m + 3] * vy);
                if (faces || Math.max(Math.abs(vx), Math.abs(vy)) <= contact) {
                    each.accept(members[m]);
                }
            }
        }
    }
}
