package org.adumbrate.linework.cleanup;

import java.util.Arrays;

/** Stretches along a line, each from a low to a high position. */
final class Stretches {
    private double[] bounds = new double[8];
    private int count;

    int count() {
        return count;
    }

    double low(int n) {
        return bounds[2 * n];
    }

    double high(int n) {
        return bounds[2 * n + 1];
    }

    void clear() {
        count = 0;
    }

    /** Adds a stretch; one that is empty is not added. */
    void add(double low, double high) {
        if (high > low) {
            if (2 * count == bounds.length) {
                bounds = Arrays.copyOf(bounds, 2 * bounds.length);
            }
            bounds[2 * count] = low;
            bounds[2 * count + 1] = high;
            count++;
        }
    }

    /** Puts them in order and makes those that overlap or meet into one. */
    void unite() {
        Stretches united = new Stretches();
        double[] lows = new double[count];
        for (int n = 0; n < count; n++) {
            lows[n] = low(n);
        }
        Integer[] order = new Integer[count];
        Arrays.setAll(order, n -> n);
        Arrays.sort(order, (a, b) -> Double.compare(lows[a], lows[b]));
        for (int n : order) {
            if (united.count > 0 && low(n) <= united.high(united.count - 1)) {
                united.bounds[2 * united.count - 1] = Math.max(united.high(united.count - 1), high(n));
            } else {
                united.add(low(n), high(n));
            }
        }
        bounds = united.bounds;
        count = united.count;
    }

    /** What lies in both; both must be united. */
    Stretches within(Stretches other) {
        Stretches both = new Stretches();
        for (int a = 0, b = 0; a < count && b < other.count; ) {
            both.add(Math.max(low(a), other.low(b)), Math.min(high(a), other.high(b)));
            if (high(a) < other.high(b)) {
                a++;
            } else {
                b++;
            }
        }
        return both;
    }

    /** What of a range from 0 they leave, less what is shorter than the least; they must be united. */
    Stretches rest(double length, double least) {
        Stretches rest = new Stretches();
        double from = 0;
        for (int n = 0; n <= count; n++) {
            double to = n < count ? low(n) : length;
            if (to - from >= least) {
                rest.add(from, to);
            }
            from = n < count ? high(n) : length;
        }
        return rest;
    }
}
