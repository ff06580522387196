package org.adumbrate.figure.shadow;

/**
 * The sun's disc, of uniform brightness and 0.533 degrees across (its mean apparent diameter), as 64 strips of equal area
 * with 64 cells each. What hides the disc is marked cell by cell, so that whatever is hidden twice counts once.
 *
 * <p>A straight edge of any direction hides what it should to within 0.008 of the disc: half a strip at most.
 */
final class SolarDisc {
    /** Half the disc's width as seen from any place: the tangent of half its angle. */
    static final double RADIUS = Math.tan(Math.toRadians(0.533 / 2));

    static final int STRIPS = 64;

    private static final int CELLS = STRIPS * Long.SIZE;

    /** The tangent above the sun's centre at which each strip has its centroid, ascending. */
    private static final double[] HEIGHTS = new double[STRIPS];

    /** Cells in a unit of tangent along each strip. */
    private static final double[] CELLS_ALONG = new double[STRIPS];

    static {
        double lower = -1;
        for (int j = 0; j < STRIPS; j++) {
            double upper = j + 1 == STRIPS ? 1 : heightBelowWhich((j + 1.0) / STRIPS);
            double area = Math.PI / STRIPS;
            HEIGHTS[j] = RADIUS * 2 / 3 * (cubedChord(lower) - cubedChord(upper)) / area;
            double halfLength = area / (2 * (upper - lower));
            CELLS_ALONG[j] = Long.SIZE / (2 * halfLength * RADIUS);
            lower = upper;
        }
    }

    private final long[] hidden = new long[STRIPS];

    /** The height in the unit disc below which a share of its area lies: the circular segment's formula, by halving. */
    private static double heightBelowWhich(double share) {
        double low = -1;
        double high = 1;
        for (int k = 0; k < 60; k++) {
            double s = (low + high) / 2;
            double below = 0.5 + (s * Math.sqrt(1 - s * s) + Math.asin(s)) / Math.PI;
            if (below < share) {
                low = s;
            } else {
                high = s;
            }
        }
        return (low + high) / 2;
    }

    private static double cubedChord(double height) {
        return Math.pow(Math.max(0, 1 - height * height), 1.5);
    }

    /** The tangent above the sun's centre at which strip j lies. */
    static double height(int j) {
        return HEIGHTS[j];
    }

    /** Shows all of it. */
    void clear() {
        java.util.Arrays.fill(hidden, 0);
    }

    /** Hides what lies between two tangents across the sun's centre, in strip j. */
    void hide(int j, double from, double to) {
        double middle = Long.SIZE / 2 + 0.5;
        int first = (int) Math.max(0, Math.min(Long.SIZE, from * CELLS_ALONG[j] + middle));
        int end = (int) Math.max(0, Math.min(Long.SIZE, to * CELLS_ALONG[j] + middle));
        if (end > first) {
            hidden[j] |= (-1L >>> (Long.SIZE - (end - first))) << first;
        }
    }

    /** Hides every so-manieth strip wholly, from a first one on. */
    void hide(int first, int step) {
        for (int j = first; j < STRIPS; j += step) {
            hidden[j] = -1;
        }
    }

    /** The share of the disc that is not hidden, 0 to 1. */
    double shown() {
        int cells = 0;
        for (long strip : hidden) {
            cells += Long.bitCount(strip);
        }
        return 1 - cells / (double) CELLS;
    }
}
