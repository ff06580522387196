package org.adumbrate.figure.shadow;

/** Columns of a row, from the first to the one after the last. */
final class Span {
    private double from = Double.POSITIVE_INFINITY;
    private double to = Double.NEGATIVE_INFINITY;

    /** Widens it to hold a place. */
    void hold(double x) {
        from = Math.min(from, x);
        to = Math.max(to, x);
    }

    /** The first pixel that it touches, no less than a bound. */
    int first(int bound) {
        return (int) Math.max(bound, Math.floor(from));
    }

    /** The pixel after the last that it touches, no more than a bound. */
    int end(int bound) {
        return (int) Math.min(bound, Math.ceil(to));
    }
}
