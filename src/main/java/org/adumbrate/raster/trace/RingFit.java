package org.adumbrate.raster.trace;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * Draws a ring of steps with straight lines. First it goes along and begins a new line where no line from the beginning of
 * the last passes all points since within the tolerance (Williams, "An efficient algorithm for the piecewise linear
 * approximation of planar curves", Computer Graphics and Image Processing 8, 1978); then each line is fitted to its points
 * by least squares, and corners lie where fitted lines meet.
 */
final class RingFit {
    /** A corner may move this far, in tolerances, to where the lines meet; lines that meet farther off are nearly parallel. */
    private static final double MOST_MOVE = 1.5;

    /** The tolerance is no more than this share of a ring's width, or a rail a pixel wide would lose its two sides. */
    private static final double SHARE_OF_WIDTH = 0.3;

    /** A ring that still has no three corners is gone along again with half the tolerance, down to this. */
    private static final double FINEST = 0.1;

    private final CrackRing ring;
    private final int start;
    private double tolerance;

    RingFit(CrackRing ring, double tolerance) {
        this.ring = ring;
        this.tolerance = Math.min(tolerance, SHARE_OF_WIDTH * 2 * ring.area() / ring.count());
        this.start = ring.farthest();
    }

    /** Adds the ring to a path, unless it has less than three corners; the number of corners that it has. */
    int draw(VectorPath.Builder<RasterPoint> path) {
        List<Integer> corners = corners();
        while (corners.size() < 3 && tolerance > FINEST) {
            tolerance /= 2;
            corners = corners();
        }
        if (corners.size() < 3) {
            return corners.size();
        }
        List<FittedLine> lines = new ArrayList<>();
        for (int k = 0; k < corners.size(); k++) {
            int end = k + 1 < corners.size() ? corners.get(k + 1) : ring.count();
            lines.add(FittedLine.through(ring, start, corners.get(k), end));
        }
        for (int k = 0; k < corners.size(); k++) {
            FittedLine before = lines.get((k + lines.size() - 1) % lines.size());
            RasterPoint corner =
                    before.meeting(lines.get(k), x(corners.get(k)), y(corners.get(k)), MOST_MOVE * tolerance);
            if (k == 0) {
                path.moveTo(corner.x(), corner.y());
            } else {
                path.lineTo(corner.x(), corner.y());
            }
        }
        path.close();
        return corners.size();
    }

    /** The points at which lines begin, counted from the start. */
    private List<Integer> corners() {
        List<Integer> corners = new ArrayList<>();
        int at = 0;
        while (at < ring.count()) {
            corners.add(at);
            at = lineFrom(at);
        }
        return corners;
    }

    /** The last point that one line from a point reaches; the whole count if it reaches back to the start. */
    private int lineFrom(int from) {
        Cone cone = new Cone(tolerance);
        int farthest = from + 1;
        double reach = 0;
        for (int k = from + 1; k <= ring.count(); k++) {
            double dx = x(k) - x(from);
            double dy = y(k) - y(from);
            double distance = Math.sqrt(dx * dx + dy * dy);
            if (distance < reach - tolerance || !cone.takes(dx, dy, distance)) {
                return farthest;
            }
            if (distance >= reach) {
                reach = distance;
                farthest = k;
            }
        }
        return ring.count();
    }

    private double x(int k) {
        return ring.x((start + k) % ring.count());
    }

    private double y(int k) {
        return ring.y((start + k) % ring.count());
    }

    /** The directions in which a line passes all points so far within the tolerance. */
    private static final class Cone {
        private final double tolerance;
        private boolean open = true;
        private double fromX;
        private double fromY;
        private double toX;
        private double toY;

        Cone(double tolerance) {
            this.tolerance = tolerance;
        }

        /** Narrows the directions to those that pass one more point; false if the point itself lies in none of them. */
        boolean takes(double dx, double dy, double distance) {
            if (distance <= tolerance) {
                return true;
            }
            if (!open && (fromX * dy - fromY * dx < 0 || dx * toY - dy * toX < 0)) {
                return false;
            }
            double sin = tolerance / distance;
            double cos = Math.sqrt(1 - sin * sin);
            double lowX = dx * cos + dy * sin;
            double lowY = dy * cos - dx * sin;
            double highX = dx * cos - dy * sin;
            double highY = dy * cos + dx * sin;
            if (open || fromX * lowY - fromY * lowX > 0) {
                fromX = lowX;
                fromY = lowY;
            }
            if (open || highX * toY - highY * toX > 0) {
                toX = highX;
                toY = highY;
            }
            open = false;
            return true;
        }
    }
}
