package org.adumbrate.geometry;

/**
 * Cuts cubic curves into chords, at equal steps of the parameter. No point of a curve lies farther than the tolerance from the
 * chord over it: a curve strays from its chord over a step h by at most h²/8 times the greatest length of its second derivative,
 * which is at most 6 times the greater second difference of its control points; so n = √(3/4 · difference / tolerance) steps
 * suffice (Wang, "The subdivision method for finding the intersection between two Bezier curves or surfaces", 1984; Goldman,
 * "Pyramid algorithms", 2002, 5.6.3). A straight line that is drawn as a curve, however unevenly it runs, is one chord: a
 * curve stays in the hull of its ends and control points.
 */
final class Flattener {
    /** What a curve is cut into at most: more than any drawing's needs, for at a tolerance of 0.01 mm that serves one of 50 m. */
    private static final int MOST_CHORDS = 2000;

    /** Control points that lie so near the chord, as a share of the tolerance, are those of a straight line but for rounding. */
    private static final double STRAIGHT = 0.01;

    private Flattener() {}

    /** Hands out the chords of a curve from its beginning to its end. */
    static void chords(
            double x0,
            double y0,
            double x1,
            double y1,
            double x2,
            double y2,
            double x3,
            double y3,
            double tolerance,
            ChordVisitor visitor) {
        int chords = count(x0, y0, x1, y1, x2, y2, x3, y3, tolerance);
        double fromX = x0;
        double fromY = y0;
        for (int k = 1; k < chords; k++) {
            double t = (double) k / chords;
            double s = 1 - t;
            double a = s * s * s;
            double b = 3 * s * s * t;
            double c = 3 * s * t * t;
            double d = t * t * t;
            double toX = a * x0 + b * x1 + c * x2 + d * x3;
            double toY = a * y0 + b * y1 + c * y2 + d * y3;
            visitor.chord(fromX, fromY, toX, toY);
            fromX = toX;
            fromY = toY;
        }
        visitor.chord(fromX, fromY, x3, y3);
    }

    private static int count(
            double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3, double tolerance) {
        double bend = Math.max(
                Math.hypot(x0 - 2 * x1 + x2, y0 - 2 * y1 + y2), Math.hypot(x1 - 2 * x2 + x3, y1 - 2 * y2 + y3));
        int chords = (int) Math.max(1, Math.min(MOST_CHORDS, Math.ceil(Math.sqrt(0.75 * bend / tolerance))));
        return chords > 1
                        && isBeside(x1, y1, x0, y0, x3, y3, STRAIGHT * tolerance)
                        && isBeside(x2, y2, x0, y0, x3, y3, STRAIGHT * tolerance)
                ? 1
                : chords;
    }

    /** Whether a point lies within a distance of a line, between its ends. */
    private static boolean isBeside(double px, double py, double x0, double y0, double x1, double y1, double distance) {
        double dx = x1 - x0;
        double dy = y1 - y0;
        double along = (px - x0) * dx + (py - y0) * dy;
        double across = (px - x0) * dy - (py - y0) * dx;
        double square = dx * dx + dy * dy;
        return along >= 0 && along <= square && across * across <= distance * distance * square;
    }
}
