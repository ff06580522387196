package org.adumbrate.linework.clip;

import java.util.Arrays;

/** Cubic polynomials in Bernstein form on 0 to 1: one coordinate, or one distance, along a curve. */
final class Cubic {
    private Cubic() {}

    /** The value at t. */
    static double at(double d0, double d1, double d2, double d3, double t) {
        return t == 0 ? d0 : t == 1 ? d3 : blossom(d0, d1, d2, d3, t, t, t);
    }

    /**
     * The blossom (polar form) of the cubic: de Casteljau's construction with a place of its own for each step. The
     * control values of the part from s to t are the blossom at (s,s,s), (s,s,t), (s,t,t) and (t,t,t) (Ramshaw, "Blossoms
     * are polar forms", 1989).
     */
    static double blossom(double d0, double d1, double d2, double d3, double r, double s, double t) {
        double a = d0 + r * (d1 - d0);
        double b = d1 + r * (d2 - d1);
        double c = d2 + r * (d3 - d2);
        double ab = a + s * (b - a);
        double bc = b + s * (c - b);
        return ab + t * (bc - ab);
    }

    /** Notes every place where the cubic changes its sign; zero counts as positive. */
    static void signChanges(double d0, double d1, double d2, double d3, Splits splits) {
        boolean oneSide = d0 < 0 == d1 < 0 && d0 < 0 == d2 < 0 && d0 < 0 == d3 < 0;
        if (oneSide) {
            return;
        }
        double[] turns = turns(d0, d1, d2, d3);
        double from = 0;
        for (double to : turns) {
            between(d0, d1, d2, d3, from, to, splits);
            from = to;
        }
    }

    /** Where the cubic's slope is zero, in order, and 1 at the end: between two of these it only rises or only falls. */
    private static double[] turns(double d0, double d1, double d2, double d3) {
        double a = d3 - 3 * d2 + 3 * d1 - d0;
        double b = 2 * (d2 - 2 * d1 + d0);
        double c = d1 - d0;
        Splits turns = new Splits();
        double discriminant = b * b - 4 * a * c;
        if (discriminant >= 0) {
            // the form that loses no digits to cancellation; a zero denominator gives a place that is left out
            double q = -(b + Math.copySign(Math.sqrt(discriminant), b)) / 2;
            turns.add(q / a);
            turns.add(c / q);
        }
        double[] ordered = turns.inOrder();
        return Arrays.copyOfRange(ordered, 1, ordered.length);
    }

    private static void between(double d0, double d1, double d2, double d3, double from, double to, Splits splits) {
        boolean negative = at(d0, d1, d2, d3, from) < 0;
        if (negative == at(d0, d1, d2, d3, to) < 0) {
            return;
        }
        double low = from;
        double high = to;
        for (double middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
            if (at(d0, d1, d2, d3, middle) < 0 == negative) {
                low = middle;
            } else {
                high = middle;
            }
        }
        splits.add(high);
    }
}
