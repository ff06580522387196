package org.adumbrate.linework.cleanup;

import java.util.Comparator;
import java.util.stream.IntStream;

/** Curves that are drawn twice. */
final class EqualCurves {
    private EqualCurves() {}

    /**
     * Leaves one of each set of curves whose ends and control points are the same, from either end.
     *
     * @param apart how far the points may lie from each other, in mm
     * @return how many were removed
     */
    static int remove(LinePieces pieces, double apart) {
        int[] fromTheLeft = IntStream.range(0, pieces.size())
                .filter(pieces::isCurve)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer k) -> middle(pieces, k)))
                .mapToInt(k -> k)
                .toArray();
        int removed = 0;
        for (int n = 0; n < fromTheLeft.length; n++) {
            int k = fromTheLeft[n];
            for (int m = n + 1; !pieces.isGone(k) && m < fromTheLeft.length; m++) {
                int other = fromTheLeft[m];
                if (middle(pieces, other) - middle(pieces, k) > apart) {
                    break;
                }
                if (!pieces.isGone(other) && (equal(pieces, k, other, 0, apart) || equal(pieces, k, other, 1, apart))) {
                    pieces.remove(Math.max(k, other));
                    removed++;
                }
            }
        }
        return removed;
    }

    private static double middle(LinePieces pieces, int k) {
        return (pieces.x(2 * k) + pieces.x(2 * k + 1)) / 2;
    }

    /** True if two curves are the same, the second taken from its end 0 or its end 1. */
    private static boolean equal(LinePieces pieces, int k, int other, int from, double apart) {
        boolean equal = true;
        for (int n = 0; n < 2; n++) {
            int end = 2 * k + n;
            int match = 2 * other + (n ^ from);
            equal &= pieces.distance(end, match) <= apart
                    && Math.hypot(
                                    pieces.towardX(end) - pieces.towardX(match),
                                    pieces.towardY(end) - pieces.towardY(match))
                            <= apart;
        }
        return equal;
    }
}
