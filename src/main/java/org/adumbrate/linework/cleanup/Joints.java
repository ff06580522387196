package org.adumbrate.linework.cleanup;

import java.util.Arrays;

/** LinePieces of one straight line, end to end or with small gaps, become one piece. */
final class Joints {
    private final LinePieces pieces;
    private final boolean[] done;
    private int[] partners;
    private int[] chain = new int[64];
    private int joined;

    private Joints(LinePieces pieces) {
        this.pieces = pieces;
        this.done = new boolean[pieces.size()];
    }

    /**
     * Joins pieces.
     *
     * @param gap in mm, the largest that is bridged
     * @return how many pieces went into another
     */
    static int join(LinePieces pieces, double gap) {
        Joints joints = new Joints(pieces);
        Links links = new Links();
        EndGrid.pairs(pieces, gap, (a, b) -> joints.offer(a, b, links));
        joints.partners = links.partners(2 * pieces.size());
        for (int k = 0; k < pieces.size(); k++) {
            if (pieces.isLine(k) && !joints.done[k]) {
                joints.shorten(joints.collect(Links.beginning(k, joints.partners)));
            }
        }
        return joints.joined;
    }

    private void offer(int a, int b, Links links) {
        int outerA = a ^ 1;
        int outerB = b ^ 1;
        if (outerA == b || !pieces.isLine(a >> 1) || !pieces.isLine(b >> 1)) {
            return;
        }
        double x = pieces.x(outerA);
        double y = pieces.y(outerA);
        double dx = pieces.x(outerB) - x;
        double dy = pieces.y(outerB) - y;
        double length = Math.hypot(dx, dy);
        boolean goesOn = dx * (pieces.x(a) - x) + dy * (pieces.y(a) - y) > 0
                && dx * (pieces.x(outerB) - pieces.x(b)) + dy * (pieces.y(outerB) - pieces.y(b)) > 0;
        if (goesOn && length > 0) {
            double off = Math.max(across(a, outerA, outerB), across(b, outerA, outerB));
            if (off <= LinePieces.SAME_MM) {
                links.offer(a, b, off + pieces.distance(a, b));
            }
        }
    }

    /** How far an end lies from the line through two others, in mm. */
    private double across(int end, int from, int to) {
        double dx = pieces.x(to) - pieces.x(from);
        double dy = pieces.y(to) - pieces.y(from);
        return Math.abs(dx * (pieces.y(end) - pieces.y(from)) - dy * (pieces.x(end) - pieces.x(from)))
                / Math.hypot(dx, dy);
    }

    /** Collects a chain as its ends in order, two for each piece, and gives how many pieces it has. */
    private int collect(int beginning) {
        int count = 0;
        int entered = beginning;
        do {
            if (2 * count == chain.length) {
                chain = Arrays.copyOf(chain, 2 * chain.length);
            }
            chain[2 * count] = entered;
            chain[2 * count + 1] = entered ^ 1;
            count++;
            done[entered >> 1] = true;
            entered = partners[entered ^ 1];
        } while (entered >= 0 && !done[entered >> 1]);
        return count;
    }

    /** Replaces a chain of pieces by as few as may be. */
    private void shorten(int count) {
        int from = 0;
        while (from < count) {
            int to = farthest(from, count);
            if (to > from + 1) {
                int first = chain[2 * from];
                int last = chain[2 * to - 1];
                pieces.move(first >> 1, pieces.x(first), pieces.y(first), pieces.x(last), pieces.y(last));
                for (int k = from + 1; k < to; k++) {
                    pieces.remove(chain[2 * k] >> 1);
                }
                joined += to - from - 1;
            }
            from = to;
        }
    }

    /** How far pieces from one on may be replaced by one, found by halving. */
    private int farthest(int from, int count) {
        if (fits(from, count)) {
            return count;
        }
        int good = from + 1;
        int bad = count;
        while (bad - good > 1) {
            int middle = (good + bad) >>> 1;
            if (fits(from, middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }

    private boolean fits(int from, int to) {
        int first = chain[2 * from];
        int last = chain[2 * to - 1];
        if (pieces.distance(first, last) == 0) {
            return false;
        }
        for (int n = 2 * from + 1; n < 2 * to - 1; n++) {
            if (across(chain[n], first, last) > LinePieces.SAME_MM) {
                return false;
            }
        }
        return true;
    }
}
