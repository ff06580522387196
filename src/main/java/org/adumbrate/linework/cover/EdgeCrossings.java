package org.adumbrate.linework.cover;

import java.util.Arrays;
import org.adumbrate.linework.clip.TooIntricateException;

/** Where the edges of an outline cross a line, by the side that they come from. */
final class EdgeCrossings {
    /** Looks at an edge or a box; some ten seconds. A model of 60000 strokes and 20000 faces takes some ten million. */
    private static final long MOST_LOOKS = 3_000_000_000L;

    private final Side fromLeft = new Side();
    private final Side fromRight = new Side();
    private long looks;

    void clear() {
        fromLeft.clear();
        fromRight.clear();
    }

    /** Counts the work. */
    void look(int more) {
        looks += more;
        if (looks > MOST_LOOKS) {
            throw new TooIntricateException(
                    "has filled areas that take more than " + MOST_LOOKS + " steps to hide lines behind");
        }
    }

    /** Notes a crossing, so far along the line. */
    void add(double along, boolean isFromLeft) {
        (isFromLeft ? fromLeft : fromRight).add(along);
    }

    /** Adds to some stretches those between 0 and a length that lie inside, by the crossings before them. */
    void insides(boolean evenOdd, double length, Spans to) {
        if (fromLeft.count + fromRight.count == 0) {
            return;
        }
        fromLeft.sort();
        fromRight.sort();
        double from = Double.NaN;
        int i = 0;
        int k = 0;
        while (i < fromLeft.count || k < fromRight.count) {
            boolean left = k == fromRight.count || (i < fromLeft.count && fromLeft.places[i] <= fromRight.places[k]);
            double place = left ? fromLeft.places[i++] : fromRight.places[k++];
            boolean inside = evenOdd ? (i + k) % 2 != 0 : i != k;
            if (inside && Double.isNaN(from)) {
                from = place;
            } else if (!inside && !Double.isNaN(from)) {
                add(from, place, length, to);
                from = Double.NaN;
            }
        }
        // what comes back beyond the end of the line was not looked for
        if (!Double.isNaN(from)) {
            add(from, length, length, to);
        }
    }

    private static void add(double from, double end, double length, Spans to) {
        if (from <= length && end >= 0) {
            to.add(Math.max(0, from), Math.min(length, end));
        }
    }

    private static final class Side {
        private double[] places = new double[16];
        private int count;

        void clear() {
            count = 0;
        }

        void add(double place) {
            if (count == places.length) {
                places = Arrays.copyOf(places, 2 * count);
            }
            places[count++] = place;
        }

        void sort() {
            if (count > 1) {
                Arrays.sort(places, 0, count);
            }
        }
    }
}
