package org.adumbrate.figure.shadow;

/** The inverses of depth that are seen in a part of the sheet lie between these, in 1/m; filled anew for each part. */
final class InverseBounds {
    private double least;
    private double greatest;

    /** Holds nothing. */
    void clear() {
        least = Double.POSITIVE_INFINITY;
        greatest = 0;
    }

    /** Widens the bounds. */
    void hold(double low, double high) {
        least = Math.min(least, low);
        greatest = Math.max(greatest, high);
    }

    /** Whether nothing is seen. */
    boolean isEmpty() {
        return !(least <= greatest);
    }

    double least() {
        return least;
    }

    double greatest() {
        return greatest;
    }
}
