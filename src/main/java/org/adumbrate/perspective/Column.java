package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The pieces that stand one above the other at one place across the sheet: one line in pieces, or several lines whose floors
 * lie at different heights or distances. Which it is, the floors tell; here is what may be.
 *
 * @param pieces from the top down by their heads; 40 at most
 */
record Column(List<HeightLine> pieces) {
    /** More pieces than this in a column are dashes: the nearest are one. */
    static final int MOST_PIECES = 40;

    /** Two feet stand in one column if they are no farther apart across than this, in mm: both ends of a piece may be off. */
    private static final double NEIGHBOURS_MM = 2 * Gap.ACROSS_MM;

    /** A column is no wider than this, in mm, so that close rows of lines do not run into one. */
    private static final double WIDEST_MM = 0.6;

    Column {
        pieces = pieces.stream()
                .sorted(Comparator.comparingDouble(
                                (HeightLine piece) -> piece.head().y())
                        .thenComparingDouble(piece -> piece.foot().y()))
                .toList();
    }

    /** Sorts pieces into columns, from left to right. */
    static List<Column> of(List<HeightLine> pieces) {
        List<HeightLine> sorted = pieces.stream()
                .sorted(Comparator.comparingDouble(Column::middle))
                .toList();
        List<Column> columns = new ArrayList<>();
        List<HeightLine> here = new ArrayList<>();
        for (HeightLine piece : sorted) {
            boolean isNext = !here.isEmpty()
                    && (middle(piece) - middle(here.get(here.size() - 1)) > NEIGHBOURS_MM
                            || middle(piece) - middle(here.get(0)) > WIDEST_MM);
            if (isNext) {
                columns.add(new Column(here).withoutDashes());
                here = new ArrayList<>();
            }
            here.add(piece);
        }
        if (!here.isEmpty()) {
            columns.add(new Column(here).withoutDashes());
        }
        return columns;
    }

    /** True if two pieces may stand in one column. */
    static boolean isBeside(HeightLine one, HeightLine other) {
        return Math.abs(middle(one) - middle(other)) <= NEIGHBOURS_MM;
    }

    private static double middle(HeightLine piece) {
        return (piece.foot().x() + piece.head().x()) / 2;
    }

    private Column withoutDashes() {
        Column column = this;
        while (column.pieces.size() > MOST_PIECES) {
            int nearest = 0;
            for (int k = 1; k + 1 < column.pieces.size(); k++) {
                nearest = Math.abs(column.gapBelow(k)) < Math.abs(column.gapBelow(nearest)) ? k : nearest;
            }
            List<HeightLine> joined = new ArrayList<>(column.pieces);
            HeightLine below = joined.remove(nearest + 1);
            HeightLine above = joined.get(nearest);
            joined.set(
                    nearest,
                    new HeightLine(below.foot().y() > above.foot().y() ? below.foot() : above.foot(), above.head()));
            column = new Column(joined);
        }
        return column;
    }

    private double gapBelow(int k) {
        return pieces.get(k + 1).head().y() - pieces.get(k).foot().y();
    }

    /**
     * All that may be one line.
     *
     * @param place the column's among all columns
     * @param most a run that costs more is not worth a look
     */
    List<Run> runs(int place, double most) {
        List<Run> runs = new ArrayList<>();
        for (int top = 0; top < pieces.size(); top++) {
            for (int bottom = top; bottom < pieces.size(); bottom++) {
                run(top, bottom, place, most, runs);
            }
        }
        return runs;
    }

    private void run(int top, int bottom, int place, double most, List<Run> into) {
        HeightLine above = pieces.get(top);
        HeightLine below = pieces.get(bottom);
        if (top != bottom && !follows(below, above)) {
            return;
        }
        HeightLine whole = new HeightLine(below.foot(), above.head());
        long members = 1L << top;
        double cost = partingAbove(top) + partingBelow(bottom);
        HeightLine last = above;
        for (int k = top + 1; k <= bottom && cost <= most; k++) {
            HeightLine piece = pieces.get(k);
            if (follows(piece, last) && (k == bottom || (follows(below, piece) && whole.passesThrough(piece)))) {
                cost += Gap.joining(piece.head().y() - last.foot().y());
                members |= 1L << k;
                last = piece;
            }
        }
        if (cost <= most && HeightLines.isUpright(whole) && whole.heightMm() >= HeightLines.CRUMB_MM) {
            into.add(new Run(whole, place, members, cost));
        }
    }

    private static boolean follows(HeightLine below, HeightLine above) {
        return below.head().y() >= above.foot().y() - Gap.OVERLAP_MM;
    }

    private double partingAbove(int k) {
        HeightLine piece = pieces.get(k);
        return parting(IntStream.range(0, pieces.size())
                .filter(other -> other != k && follows(piece, pieces.get(other)))
                .mapToDouble(
                        other -> piece.head().y() - pieces.get(other).foot().y()));
    }

    private double partingBelow(int k) {
        HeightLine piece = pieces.get(k);
        return parting(IntStream.range(0, pieces.size())
                .filter(other -> other != k && follows(pieces.get(other), piece))
                .mapToDouble(
                        other -> pieces.get(other).head().y() - piece.foot().y()));
    }

    /** What it costs to take a piece for the end of a line, by the gaps to the pieces beyond it. */
    private static double parting(DoubleStream gaps) {
        OptionalDouble nearest = gaps.min();
        return nearest.isPresent() ? Gap.parting(nearest.getAsDouble()) : 0;
    }

    /** The pieces that are left, those joined that are rather one line than two. */
    List<HeightLine> rest(long taken) {
        List<HeightLine> rest = new ArrayList<>();
        boolean isApart = true;
        for (int k = 0; k < pieces.size(); k++) {
            if ((taken & 1L << k) != 0) {
                isApart = true;
                continue;
            }
            HeightLine piece = pieces.get(k);
            HeightLine last = rest.isEmpty() ? piece : rest.get(rest.size() - 1);
            double gap = piece.head().y() - last.foot().y();
            if (!isApart && follows(piece, last) && Gap.isWithinALine(gap)) {
                rest.set(rest.size() - 1, new HeightLine(piece.foot(), last.head()));
            } else {
                rest.add(piece);
            }
            isApart = false;
        }
        rest.removeIf(piece -> piece.heightMm() < HeightLines.CRUMB_MM);
        return rest;
    }
}
