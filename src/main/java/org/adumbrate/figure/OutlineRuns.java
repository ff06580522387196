package org.adumbrate.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.Region;

/** The sides of a region, and at each of them how far the region reaches across to the other side. */
final class OutlineRuns implements PieceVisitor {
    private static final int ROWS = 512;

    private final List<Side> sides = new ArrayList<>();
    private final List<List<Side>> rows = new ArrayList<>();
    private int ring = -1;
    private double top;
    private double rowsPerUnit;

    /** One side: y down, as in the region; sides of one ring follow one another and have its number. */
    record Side(int number, int ring, double x0, double y0, double x1, double y1) {
        boolean isLevel() {
            return y0 == y1;
        }

        double xAt(double level) {
            return x0 + (x1 - x0) * (level - y0) / (y1 - y0);
        }

        boolean crosses(double level) {
            return y0 <= level != y1 <= level;
        }
    }

    /**
     * A run of the region across a side: from its left to its right end, one of which lies on the side.
     *
     * @param left x of its left end
     * @param right x of its right end
     * @param onRight whether the side is at its right end
     */
    record Run(double left, double right, boolean onRight) {}

    private OutlineRuns() {}

    static OutlineRuns of(Region<?> region) {
        OutlineRuns runs = new OutlineRuns();
        region.outline().pieces(runs);
        runs.sortIntoRows();
        return runs;
    }

    List<Side> sides() {
        return sides;
    }

    private void sortIntoRows() {
        double[] levels = sides.stream().mapToDouble(Side::y0).toArray();
        top = Arrays.stream(levels).min().orElse(0);
        double bottom = Arrays.stream(levels).max().orElse(0);
        rowsPerUnit = bottom > top ? ROWS / (bottom - top) : 0;
        for (int k = 0; k <= ROWS; k++) {
            rows.add(new ArrayList<>());
        }
        for (Side side : sides) {
            for (int k = row(Math.min(side.y0, side.y1)); k <= row(Math.max(side.y0, side.y1)); k++) {
                rows.get(k).add(side);
            }
        }
    }

    private int row(double level) {
        return (int) Math.max(0, Math.min(ROWS, (level - top) * rowsPerUnit));
    }

    /** The run across a side at a level between its ends. */
    Run across(Side side, double level) {
        double here = side.xAt(level);
        int before = 0;
        double toLeft = Double.NEGATIVE_INFINITY;
        double toRight = Double.POSITIVE_INFINITY;
        for (Side other : rows.get(row(level))) {
            if (other.number != side.number && other.crosses(level)) {
                double there = other.xAt(level);
                if (there < here || (there == here && other.number < side.number)) {
                    before++;
                    toLeft = Math.max(toLeft, there);
                } else {
                    toRight = Math.min(toRight, there);
                }
            }
        }
        boolean onRight = before % 2 == 1;
        double far = onRight ? toLeft : toRight;
        double end = Double.isFinite(far) ? far : here;
        return onRight ? new Run(end, here, true) : new Run(here, end, false);
    }

    @Override
    public void begin(double x, double y) {
        ring++;
    }

    @Override
    public void piece(PathPiece piece) {
        sides.add(new Side(sides.size(), ring, piece.x0(), piece.y0(), piece.x3(), piece.y3()));
    }
}
