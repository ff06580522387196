package org.adumbrate.linework.cleanup;

import java.util.Optional;

/**
 * Where two pieces meet.
 *
 * @param x in mm
 * @param y in mm
 */
record Corner(double x, double y) {

    /**
     * The place where two linked ends are brought together: half way between ends that are the same but for rounding, else
     * where the two straight lines cross.
     *
     * @param gap in mm, the farthest that an end may be moved
     */
    static Optional<Corner> between(LinePieces pieces, int a, int b, double gap) {
        double ax = pieces.x(a);
        double ay = pieces.y(a);
        double bx = pieces.x(b);
        double by = pieces.y(b);
        if (pieces.distance(a, b) <= LinePieces.SAME_MM) {
            return Optional.of(new Corner((ax + bx) / 2, (ay + by) / 2));
        }
        if (!pieces.isLine(a >> 1) || !pieces.isLine(b >> 1)) {
            return Optional.empty();
        }
        double ux = ax - pieces.x(a ^ 1);
        double uy = ay - pieces.y(a ^ 1);
        double vx = bx - pieces.x(b ^ 1);
        double vy = by - pieces.y(b ^ 1);
        double cross = ux * vy - uy * vx;
        if (cross == 0) {
            return Optional.empty();
        }
        double t = ((bx - ax) * vy - (by - ay) * vx) / cross;
        double x = ax + t * ux;
        double y = ay + t * uy;
        boolean near = Math.hypot(x - ax, y - ay) <= gap && Math.hypot(x - bx, y - by) <= gap;
        return near && t > -1 ? Optional.of(new Corner(x, y)) : Optional.empty();
    }
}
