package org.adumbrate.raster.trace;

import org.adumbrate.geometry.RasterPoint;

/**
 * The line that is nearest to some points.
 *
 * @param x of a point on it
 * @param y of that point
 * @param alongX x of its unit direction
 * @param alongY y of its unit direction
 */
record FittedLine(double x, double y, double alongX, double alongY) {
    private static final double TRIM = 0.1;
    private static final int MOST_TRIM = 4;

    /**
     * The line through the middle of a run of points along its principal axis; a few points at both ends, which the corners
     * there have bent, are left out.
     *
     * @param ring the points
     * @param start the number of the ring's point that is counted as 0
     * @param from the first point
     * @param to the last point
     */
    static FittedLine through(CrackRing ring, int start, int from, int to) {
        int trim = (int) Math.min(MOST_TRIM, TRIM * (to - from + 1));
        int first = from + trim;
        int last = to - trim;
        double n = last - first + 1;
        double sumX = 0;
        double sumY = 0;
        for (int k = first; k <= last; k++) {
            int at = (start + k) % ring.count();
            sumX += ring.x(at);
            sumY += ring.y(at);
        }
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int k = first; k <= last; k++) {
            int at = (start + k) % ring.count();
            double dx = ring.x(at) - sumX / n;
            double dy = ring.y(at) - sumY / n;
            xx += dx * dx;
            xy += dx * dy;
            yy += dy * dy;
        }
        double angle = Math.atan2(2 * xy, xx - yy) / 2;
        return new FittedLine(sumX / n, sumY / n, Math.cos(angle), Math.sin(angle));
    }

    /**
     * Where it meets another line; if that is farther than a limit from a point, the middle of the point's feet on both.
     *
     * @param nearX x of the point
     * @param nearY y of the point
     */
    RasterPoint meeting(FittedLine other, double nearX, double nearY, double limit) {
        double cross = alongX * other.alongY - alongY * other.alongX;
        double t = ((other.x - x) * other.alongY - (other.y - y) * other.alongX) / cross;
        double meetX = x + t * alongX;
        double meetY = y + t * alongY;
        if (Math.hypot(meetX - nearX, meetY - nearY) <= limit) {
            return new RasterPoint(meetX, meetY);
        }
        double here = (nearX - x) * alongX + (nearY - y) * alongY;
        double there = (nearX - other.x) * other.alongX + (nearY - other.y) * other.alongY;
        return new RasterPoint(
                (x + here * alongX + other.x + there * other.alongX) / 2,
                (y + here * alongY + other.y + there * other.alongY) / 2);
    }
}
