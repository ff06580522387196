package org.adumbrate.linework.cleanup;

import java.util.Comparator;
import java.util.stream.IntStream;

/** Straight pieces that lie on each other: the longer stays whole, the shorter loses what both cover. */
final class Duplicates {
    /** In mm: what overlaps less, or is shorter, is nothing. */
    private static final double NOTHING_MM = 0.001;

    private final LinePieces pieces;
    private final double apart;
    private int merged;

    private Duplicates(LinePieces pieces, double apart) {
        this.pieces = pieces;
        this.apart = apart;
    }

    /**
     * Removes what is drawn twice.
     *
     * @param apart how far from each other lines may run, in mm
     * @return how many pieces lost something
     */
    static int remove(LinePieces pieces, double apart) {
        Duplicates duplicates = new Duplicates(pieces, apart);
        duplicates.run();
        return duplicates.merged;
    }

    private void run() {
        int[] longestFirst = IntStream.of(pieces.lines())
                .boxed()
                .sorted(Comparator.comparingDouble((Integer k) -> -pieces.span(k)))
                .mapToInt(k -> k)
                .toArray();
        int[] rank = new int[pieces.size()];
        for (int n = 0; n < longestFirst.length; n++) {
            rank[longestFirst[n]] = n;
        }
        SegmentGrid grid = new SegmentGrid(pieces, longestFirst, apart);
        for (int k : longestFirst) {
            if (!pieces.isGone(k)) {
                int near = grid.near(pieces.x(2 * k), pieces.y(2 * k), pieces.x(2 * k + 1), pieces.y(2 * k + 1));
                for (int n = 0; n < near && !pieces.isGone(k); n++) {
                    int other = grid.found(n);
                    if (rank[other] > rank[k] && !pieces.isGone(other)) {
                        compare(k, other);
                    }
                }
            }
        }
    }

    private void compare(int a, int b) {
        double lengthA = pieces.span(a);
        double lengthB = pieces.span(b);
        if (lengthA >= lengthB) {
            trim(a, lengthA, b, lengthB);
        } else {
            trim(b, lengthB, a, lengthA);
        }
    }

    /** Takes from the shorter piece what lies on the longer. */
    private void trim(int longer, double length, int shorter, double shortLength) {
        double ax = pieces.x(2 * longer);
        double ay = pieces.y(2 * longer);
        double ux = (pieces.x(2 * longer + 1) - ax) / length;
        double uy = (pieces.y(2 * longer + 1) - ay) / length;
        double px = pieces.x(2 * shorter) - ax;
        double py = pieces.y(2 * shorter) - ay;
        double qx = pieces.x(2 * shorter + 1) - ax;
        double qy = pieces.y(2 * shorter + 1) - ay;
        double acrossP = ux * py - uy * px;
        double acrossQ = ux * qy - uy * qx;
        if (!(length > 0) || Math.abs(acrossP - acrossQ) > apart) {
            return;
        }
        double alongP = ux * px + uy * py;
        double alongQ = ux * qx + uy * qy;
        double low = Math.max(0, Math.min(alongP, alongQ));
        double high = Math.min(length, Math.max(alongP, alongQ));
        if (high - low < Math.min(NOTHING_MM, shortLength)) {
            return;
        }
        double slope = alongP == alongQ ? 0 : (acrossQ - acrossP) / (alongQ - alongP);
        double acrossLow = acrossP + slope * (low - alongP);
        double acrossHigh = acrossP + slope * (high - alongP);
        if (Math.abs(acrossLow) > apart || Math.abs(acrossHigh) > apart) {
            return;
        }
        merged++;
        boolean inLine = Math.max(Math.abs(acrossP), Math.abs(acrossQ)) <= LinePieces.SAME_MM;
        double least = (inLine ? NOTHING_MM : apart) / shortLength;
        double covered = (high - low) / Math.abs(alongQ - alongP);
        double before = Math.max(0, (alongP < alongQ ? low - alongP : alongP - high) / Math.abs(alongQ - alongP));
        keepRest(shorter, before, before + covered, least);
    }

    /** Leaves of a piece what lies outside a range, all given as shares of its length; less than the least is nothing. */
    private void keepRest(int piece, double from, double to, double least) {
        if (!(Math.max(from, 1 - to) >= least)) {
            pieces.remove(piece);
        } else if (from >= 1 - to) {
            cut(piece, 0, from);
        } else {
            cut(piece, to, 1);
        }
    }

    private void cut(int piece, double from, double to) {
        double x = pieces.x(2 * piece);
        double y = pieces.y(2 * piece);
        double dx = pieces.x(2 * piece + 1) - x;
        double dy = pieces.y(2 * piece + 1) - y;
        pieces.move(
                piece,
                from == 0 ? x : x + from * dx,
                from == 0 ? y : y + from * dy,
                to == 1 ? x + dx : x + to * dx,
                to == 1 ? y + dy : y + to * dy);
    }
}
