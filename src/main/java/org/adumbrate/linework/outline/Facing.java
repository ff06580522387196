package org.adumbrate.linework.outline;

/**
 * A stretch on which two edges of a shape face each other across it, and the middle between them.
 *
 * @param first one of the edges, by its number among all of the shape
 * @param second the other
 * @param x0 where the middle begins, in the direction of the first edge
 * @param x1 where it ends
 * @param width0 how far the edges are apart where it begins
 * @param width1 how far they are apart where it ends
 * @param from0 how far along the first edge the stretch begins
 * @param to0 how far along the first edge it ends
 * @param from1 how far along the second edge it begins, seen from where that begins
 * @param to1 how far along the second edge it ends
 */
record Facing(
        int first,
        int second,
        double x0,
        double y0,
        double x1,
        double y1,
        double width0,
        double width1,
        double from0,
        double to0,
        double from1,
        double to1) {
    double length() {
        return Math.hypot(x1 - x0, y1 - y0);
    }

    /** The x of one of its ends, 0 or 1. */
    double x(int end) {
        return end == 0 ? x0 : x1;
    }

    /** As {@link #x}. */
    double y(int end) {
        return end == 0 ? y0 : y1;
    }
}
