package org.adumbrate.linework.clip;

import java.util.Arrays;
import org.adumbrate.geometry.PathPiece;

/** Where pieces of paths pass straight lines. */
final class SideChanges {
    private SideChanges() {}

    /** Notes where a piece passes from one side of the line {@code a·x + b·y = c} to the other. */
    static void note(PathPiece piece, double a, double b, double c, Splits splits) {
        double d0 = a * piece.x0() + b * piece.y0() - c;
        double d3 = a * piece.x3() + b * piece.y3() - c;
        if (piece.straight()) {
            if (d0 < 0 != d3 < 0) {
                splits.add(d0 / (d0 - d3));
            }
        } else {
            signChanges(d0, a * piece.x1() + b * piece.y1() - c, a * piece.x2() + b * piece.y2() - c, d3, splits);
        }
    }

    /** Notes every place where a cubic in Bernstein form changes its sign; zero counts as positive. */
    private static void signChanges(double d0, double d1, double d2, double d3, Splits splits) {
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
        boolean negative = PathPiece.at(d0, d1, d2, d3, from) < 0;
        if (negative == PathPiece.at(d0, d1, d2, d3, to) < 0) {
            return;
        }
        double low = from;
        double high = to;
        for (double middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
            if (PathPiece.at(d0, d1, d2, d3, middle) < 0 == negative) {
                low = middle;
            } else {
                high = middle;
            }
        }
        splits.add(high);
    }
}
