package org.adumbrate.linework.outline;

import java.util.Arrays;
import java.util.List;

/**
 * Where the stretches of a shape's middle end, and which go on into which: those of one group meet where their lines cross; one that is
 * alone ends where the line ended that the shape was made of.
 */
final class MiddleEnds {
    /** Lines that turn less than this are those of a curve, which meet half-way, in radians. */
    private static final double CURVED = 0.2;

    /** Ends of a branch that turn less than this go on into each other, in radians. */
    private static final double STRAIGHT = 0.1;

    /** How far a rim may lie from where its line ends or turns, in widths: a square cap's corner, and a little more. */
    private static final double NEAR = 1.1;

    /** The same where a line turns: strokers leave needles on the inner side. */
    private static final double NEAR_CORNER = 2.2;

    /** The same where several lines meet. */
    private static final double NEAR_BRANCHES = 3;

    private final ShapeEdges edges;
    private final List<Facing> stretches;
    private final FlankGaps gaps;
    private final double width;
    private final double[] x;
    private final double[] y;
    private final int[] next;
    private boolean sound = true;
    private int corners;
    private int free;
    private int round;

    MiddleEnds(ShapeEdges edges, List<Facing> stretches, double width) {
        this.edges = edges;
        this.stretches = stretches;
        this.gaps = new FlankGaps(edges, stretches);
        this.width = width;
        this.x = new double[2 * stretches.size()];
        this.y = new double[2 * stretches.size()];
        this.next = new int[2 * stretches.size()];
        Arrays.fill(next, -1);
        for (int[] group : gaps.groups()) {
            switch (group.length) {
                case 1 -> free(group[0]);
                case 2 -> corner(group[0], group[1]);
                default -> branches(group);
            }
        }
    }

    /** Whether the rim keeps near to the middle at all ends and corners, as a line's does. */
    boolean areSound() {
        return sound;
    }

    double x(int end) {
        return x[end];
    }

    double y(int end) {
        return y[end];
    }

    /** The end that a line goes on with after an end; -1 if it ends there. */
    int next(int end) {
        return next[end];
    }

    /** How many places there are where lines turn or meet. */
    int corners() {
        return corners;
    }

    /** How many ends are free. */
    int free() {
        return free;
    }

    /** How many of these are round. */
    int round() {
        return round;
    }

    private void free(int end) {
        free++;
        double px = stretches.get(end >> 1).x(end & 1);
        double py = stretches.get(end >> 1).y(end & 1);
        double ux = outX(end);
        double uy = outY(end);
        List<Integer> around = gaps.corners(end);
        place(end, px, py);
        if (around.size() == 2) {
            double midX = (edges.x(around.get(0)) + edges.x(around.get(1))) / 2;
            double midY = (edges.y(around.get(0)) + edges.y(around.get(1))) / 2;
            place(end, midX, midY);
        } else if (around.size() > 2) {
            double tip = 0;
            for (int corner : around) {
                tip = Math.max(tip, ux * (edges.x(corner) - px) + uy * (edges.y(corner) - py));
            }
            double cx = px + (tip - width / 2) * ux;
            double cy = py + (tip - width / 2) * uy;
            if (isRound(around, cx, cy, ux, uy)) {
                place(end, cx, cy);
                round++;
            }
        }
        requireNear(end, NEAR * width);
    }

    private boolean isRound(List<Integer> around, double cx, double cy, double ux, double uy) {
        for (int corner : around) {
            double dx = edges.x(corner) - cx;
            double dy = edges.y(corner) - cy;
            boolean beyond = ux * dx + uy * dy > 0.05 * width;
            if (beyond && Math.abs(Math.hypot(dx, dy) - width / 2) > 0.1 * width) {
                return false;
            }
        }
        return true;
    }

    private void corner(int a, int b) {
        next[a] = b;
        next[b] = a;
        double ax = stretches.get(a >> 1).x(a & 1);
        double ay = stretches.get(a >> 1).y(a & 1);
        double bx = stretches.get(b >> 1).x(b & 1);
        double by = stretches.get(b >> 1).y(b & 1);
        double sin = outX(a) * outY(b) - outY(a) * outX(b);
        double cos = -(outX(a) * outX(b) + outY(a) * outY(b));
        double turn = Math.abs(Math.atan2(sin, cos));
        double atX = (ax + bx) / 2;
        double atY = (ay + by) / 2;
        double near = NEAR_CORNER * width;
        if (turn > CURVED) {
            corners++;
            double fromA = ((bx - ax) * outY(b) - (by - ay) * outX(b)) / sin;
            double fromB = ((bx - ax) * outY(a) - (by - ay) * outX(a)) / sin;
            double reach = 0.75 * width * Math.tan(Math.min(turn, 3) / 2) + 0.1 * width + 0.03;
            if (Math.max(Math.abs(fromA), Math.abs(fromB)) <= reach) {
                atX = ax + fromA * outX(a);
                atY = ay + fromA * outY(a);
            }
            near = Math.max(near, 1.1 * width / 2 / Math.cos(Math.min(turn, 3) / 2));
        } else if (Math.hypot(bx - ax, by - ay) > width) {
            sound = false;
        }
        place(a, atX, atY);
        place(b, atX, atY);
        requireNear(a, near);
    }

    /** Where three lines and more meet, those that go straight on are one, and all end at the place that is nearest to all of them. */
    private void branches(int[] group) {
        corners += group.length - 1;
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double bx = 0;
        double by = 0;
        for (int end : group) {
            double nx = -outY(end);
            double ny = outX(end);
            double d = nx * stretches.get(end >> 1).x(end & 1)
                    + ny * stretches.get(end >> 1).y(end & 1);
            xx += nx * nx;
            xy += nx * ny;
            yy += ny * ny;
            bx += nx * d;
            by += ny * d;
        }
        double determinant = xx * yy - xy * xy;
        if (determinant < 1e-3) {
            sound = false;
            return;
        }
        double atX = (yy * bx - xy * by) / determinant;
        double atY = (xx * by - xy * bx) / determinant;
        for (int end : group) {
            double dx = atX - stretches.get(end >> 1).x(end & 1);
            double dy = atY - stretches.get(end >> 1).y(end & 1);
            double off = Math.abs(outX(end) * dy - outY(end) * dx);
            sound &= off <= 0.1 * width + 0.02 && Math.hypot(dx, dy) <= NEAR_BRANCHES * width;
            place(end, atX, atY);
            requireNear(end, NEAR_BRANCHES * width);
        }
        for (int k = 0; k < group.length; k++) {
            for (int n = k + 1; n < group.length && next[group[k]] < 0; n++) {
                goOn(group[k], group[n]);
            }
        }
    }

    private void goOn(int a, int b) {
        double cos = -(outX(a) * outX(b) + outY(a) * outY(b));
        if (next[b] < 0 && cos > Math.cos(STRAIGHT)) {
            next[a] = b;
            next[b] = a;
        }
    }

    private void place(int end, double atX, double atY) {
        x[end] = atX;
        y[end] = atY;
    }

    private void requireNear(int end, double most) {
        for (int corner : gaps.corners(end)) {
            sound &= Math.hypot(edges.x(corner) - x[end], edges.y(corner) - y[end]) <= most + 0.01;
        }
    }

    /** The direction in which a stretch ends. */
    private double outX(int end) {
        Facing stretch = stretches.get(end >> 1);
        double along = (stretch.x1() - stretch.x0()) / stretch.length();
        return (end & 1) == 0 ? -along : along;
    }

    /** As {@link #outX}. */
    private double outY(int end) {
        Facing stretch = stretches.get(end >> 1);
        double along = (stretch.y1() - stretch.y0()) / stretch.length();
        return (end & 1) == 0 ? -along : along;
    }
}
