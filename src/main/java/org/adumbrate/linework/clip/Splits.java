package org.adumbrate.linework.clip;

import java.util.Arrays;

/** The places along a piece, 0 to 1, where it may be cut; each interval between two of them is wholly visible or hidden. */
final class Splits {
    private double[] places = new double[8];
    private int count;

    /** Notes a place; the two ends need not be noted. */
    void add(double place) {
        if (place > 0 && place < 1) {
            if (count == places.length) {
                places = Arrays.copyOf(places, 2 * count);
            }
            places[count++] = place;
        }
    }

    /** All places from 0 to 1 in order, both included. */
    double[] inOrder() {
        double[] ordered = new double[count + 2];
        System.arraycopy(places, 0, ordered, 1, count);
        ordered[count + 1] = 1;
        Arrays.sort(ordered);
        return ordered;
    }
}
