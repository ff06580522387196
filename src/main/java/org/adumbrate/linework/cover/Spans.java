package org.adumbrate.linework.cover;

import java.util.Arrays;

/** Stretches along a line or a piece of a path, in order and apart. */
final class Spans {
    private final double seam;
    private double[] ends = new double[8];
    private int count;

    /** @param seam stretches that come as near as this are one */
    Spans(double seam) {
        this.seam = seam;
    }

    /** How many there are. */
    int size() {
        return count / 2;
    }

    double from(int k) {
        return ends[2 * k];
    }

    double to(int k) {
        return ends[2 * k + 1];
    }

    void clear() {
        count = 0;
    }

    /** Whether one of them holds all between two places. */
    boolean hold(double from, double to) {
        for (int k = 0; k < count; k += 2) {
            if (ends[k] <= from + seam && ends[k + 1] >= to - seam) {
                return true;
            }
        }
        return false;
    }

    /** Takes a stretch in, joined with those that it meets. */
    void add(double from, double to) {
        int first = 0;
        while (first < count && ends[first + 1] < from - seam) {
            first += 2;
        }
        double start = from;
        double end = to;
        int last = first;
        while (last < count && ends[last] <= end + seam) {
            start = Math.min(start, ends[last]);
            end = Math.max(end, ends[last + 1]);
            last += 2;
        }
        if (count + 2 > ends.length) {
            ends = Arrays.copyOf(ends, 2 * ends.length);
        }
        System.arraycopy(ends, last, ends, first + 2, count - last);
        ends[first] = start;
        ends[first + 1] = end;
        count += first + 2 - last;
    }

    /** Takes in what two have in common. */
    void addCommon(Spans a, Spans b) {
        int i = 0;
        int k = 0;
        while (i < a.count && k < b.count) {
            double from = Math.max(a.ends[i], b.ends[k]);
            double to = Math.min(a.ends[i + 1], b.ends[k + 1]);
            if (from < to) {
                add(from, to);
            }
            if (a.ends[i + 1] < b.ends[k + 1]) {
                i += 2;
            } else {
                k += 2;
            }
        }
    }
}
