package org.adumbrate.linework.cleanup;

import java.util.Arrays;
import java.util.function.IntConsumer;

/**
 * Finds straight pieces near a place by a grid of square cells, each with a list of the pieces that come within reach of it.
 * LinePieces may shrink after that, but not move.
 */
final class SegmentGrid {
    private static final double LEAST_CELL_MM = 1;
    private static final double MOST_CELLS_ACROSS = 1000;

    /** A piece of mean length lies in about this many cells. */
    private static final double CELLS_PER_PIECE = 16;

    private final double reach;
    private final double left;
    private final double top;
    private final double cell;
    private final int columns;
    private final int rows;
    private final int[] starts;
    private final int[] members;
    private final int[] lastAsked;
    private int asked;
    private int[] found = new int[64];
    private int count;

    /**
     * Takes up pieces.
     *
     * @param numbers which ones
     * @param reach in mm: a query finds everything that comes this near
     */
    SegmentGrid(LinePieces pieces, int[] numbers, double reach) {
        this.reach = reach;
        double[] box = box(pieces, numbers);
        double span = Math.max(box[2] - box[0], box[3] - box[1]) + 2 * reach;
        double mean = Arrays.stream(numbers).mapToDouble(pieces::span).average().orElse(0);
        cell = Math.max(LEAST_CELL_MM, Math.max(mean / CELLS_PER_PIECE, span / MOST_CELLS_ACROSS));
        left = box[0] - reach;
        top = box[1] - reach;
        columns = 1 + (int) ((box[2] - box[0] + 2 * reach) / cell);
        rows = 1 + (int) ((box[3] - box[1] + 2 * reach) / cell);
        starts = new int[columns * rows + 1];
        for (int k : numbers) {
            cells(pieces, k, c -> starts[c + 1]++);
        }
        for (int c = 0; c < columns * rows; c++) {
            starts[c + 1] += starts[c];
        }
        members = new int[starts[columns * rows]];
        int[] next = starts.clone();
        for (int k : numbers) {
            cells(pieces, k, c -> members[next[c]++] = k);
        }
        lastAsked = new int[pieces.size()];
    }

    private static double[] box(LinePieces pieces, int[] numbers) {
        double[] box = {0, 0, 0, 0};
        for (int n = 0; n < numbers.length; n++) {
            for (int end = 2 * numbers[n]; end <= 2 * numbers[n] + 1; end++) {
                boolean first = n == 0 && (end & 1) == 0;
                box[0] = first ? pieces.x(end) : Math.min(box[0], pieces.x(end));
                box[1] = first ? pieces.y(end) : Math.min(box[1], pieces.y(end));
                box[2] = first ? pieces.x(end) : Math.max(box[2], pieces.x(end));
                box[3] = first ? pieces.y(end) : Math.max(box[3], pieces.y(end));
            }
        }
        return box;
    }

    /** Looks for the pieces that may come within reach of a segment; each is found once. Gives how many. */
    int near(double x0, double y0, double x1, double y1) {
        asked++;
        count = 0;
        cells(x0, y0, x1, y1, 0, this::collect);
        return count;
    }

    /** The number of the n-th piece that the last query found. */
    int found(int n) {
        return found[n];
    }

    private void collect(int c) {
        for (int m = starts[c]; m < starts[c + 1]; m++) {
            int k = members[m];
            if (lastAsked[k] != asked) {
                lastAsked[k] = asked;
                if (count == found.length) {
                    found = Arrays.copyOf(found, 2 * count);
                }
                found[count++] = k;
            }
        }
    }

    private void cells(LinePieces pieces, int k, IntConsumer each) {
        cells(pieces.x(2 * k), pieces.y(2 * k), pieces.x(2 * k + 1), pieces.y(2 * k + 1), reach, each);
    }

    /** The cells that a segment comes within a distance of, and perhaps a few beside them. */
    private void cells(double x0, double y0, double x1, double y1, double around, IntConsumer each) {
        int first = row(Math.min(y0, y1) - around);
        int last = row(Math.max(y0, y1) + around);
        double slope = y1 == y0 ? 0 : (x1 - x0) / (y1 - y0);
        for (int row = first; row <= last; row++) {
            double from = Math.min(x0, x1);
            double to = Math.max(x0, x1);
            if (slope != 0) {
                double atTop = x0 + slope * (top + row * cell - around - y0);
                double atFoot = x0 + slope * (top + (row + 1) * cell + around - y0);
                from = Math.max(from, Math.min(atTop, atFoot));
                to = Math.min(to, Math.max(atTop, atFoot));
            }
            for (int column = column(from - around); column <= column(to + around); column++) {
                each.accept(row * columns + column);
            }
        }
    }

    private int column(double x) {
        return Math.max(0, Math.min(columns - 1, (int) ((x - left) / cell)));
    }

    private int row(double y) {
        return Math.max(0, Math.min(rows - 1, (int) ((y - top) / cell)));
    }
}
