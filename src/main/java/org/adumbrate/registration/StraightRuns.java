package org.adumbrate.registration;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Straight pieces put together where one goes straight on from the end of another, in whatever order and direction they stand. Exports that
 * cut all lines into pieces draw the same lines so; a line counts as one however often it is cut.
 */
final class StraightRuns {
    /** Ends as near as this meet, in mm: what rounding leaves between them. */
    private static final double MEET_MM = 0.01;

    /** What goes on within this angle is straight, in radians... */
    private static final double STRAIGHT = Math.toRadians(0.3);

    /** ...and for each mm of the shorter piece, by so many mm at its end. */
    private static final double NOISE_MM = 0.008;

    private static final int MOST_AT_A_PLACE = 32;

    private static final int NONE = -1;
    private static final int SEVERAL = -2;

    private final double[] pieces;

    /** For each end, 2k of piece k's beginning and 2k + 1, the end that goes on from it; -1 if none or several do. */
    private final int[] on;

    private StraightRuns(double[] pieces) {
        this.pieces = pieces;
        this.on = new int[pieces.length / 2];
        Arrays.fill(on, NONE);
        link();
    }

    /** The runs, x0 y0 x1 y1 in a row as the pieces are; each stands where the first of its pieces stood. */
    static double[] of(double[] pieces) {
        return new StraightRuns(pieces).runs();
    }

    private void link() {
        Map<Long, int[]> places = new HashMap<>();
        for (int end = 0; end < on.length; end++) {
            long column = Math.round(x(end) / MEET_MM);
            long row = Math.round(y(end) / MEET_MM);
            for (long c = column - 1; c <= column + 1; c++) {
                for (long r = row - 1; r <= row + 1; r++) {
                    for (int other : places.getOrDefault(key(c, r), new int[0])) {
                        if (goesOn(end, other)) {
                            put(end, other);
                            put(other, end);
                        }
                    }
                }
            }
            int added = end;
            places.merge(key(column, row), new int[] {end}, (a, b) -> {
                // a place where very many end is no place where one goes on
                int[] more = a.length < MOST_AT_A_PLACE ? Arrays.copyOf(a, a.length + 1) : a;
                more[more.length - 1] = added;
                return more;
            });
        }
    }

    private static long key(long column, long row) {
        return (column << 32) ^ (row & 0xFFFFFFFFL);
    }

    private void put(int end, int other) {
        on[end] = on[end] == NONE ? other : SEVERAL;
    }

    private boolean goesOn(int a, int b) {
        if (a >> 1 == b >> 1) {
            return false;
        }
        double ax = x(a) - x(a ^ 1);
        double ay = y(a) - y(a ^ 1);
        double bx = x(b ^ 1) - x(b);
        double by = y(b ^ 1) - y(b);
        double shorter = Math.min(Math.hypot(ax, ay), Math.hypot(bx, by));
        double angle = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
        return shorter > 0 && Math.abs(angle) <= Math.min(0.1, STRAIGHT + NOISE_MM / shorter);
    }

    private double[] runs() {
        double[] runs = new double[pieces.length];
        int count = 0;
        boolean[] done = new boolean[on.length / 2];
        for (int k = 0; k < done.length; k++) {
            if (!done[k]) {
                done[k] = true;
                int first = last(2 * k, done);
                int end = last(2 * k + 1, done);
                runs[count++] = x(first);
                runs[count++] = y(first);
                runs[count++] = x(end);
                runs[count++] = y(end);
            }
        }
        return Arrays.copyOf(runs, count);
    }

    /** The farthest end of the run that goes on from an end. The whole run keeps to the direction of the piece that it is looked from. */
    private int last(int from, boolean[] done) {
        int end = from;
        while (on[end] >= 0 && on[on[end]] == end && !done[on[end] >> 1] && isAhead(from, on[end] ^ 1)) {
            int next = on[end] ^ 1;
            done[next >> 1] = true;
            end = next;
        }
        return end;
    }

    /** Whether an end lies on the straight line on from a piece's, so that no bend adds up from piece to piece. */
    private boolean isAhead(int from, int end) {
        double ux = x(from) - x(from ^ 1);
        double uy = y(from) - y(from ^ 1);
        double length = Math.hypot(ux, uy);
        double vx = x(end) - x(from);
        double vy = y(end) - y(from);
        double along = (ux * vx + uy * vy) / length;
        double off = Math.abs(ux * vy - uy * vx) / length;
        return along > 0 && off <= 2 * MEET_MM + along * Math.min(STRAIGHT, NOISE_MM / length);
    }

    private double x(int end) {
        return pieces[2 * end];
    }

    private double y(int end) {
        return pieces[2 * end + 1];
    }
}
