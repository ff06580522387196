package org.adumbrate.linework.cleanup;

import java.util.Arrays;

/**
 * Bundles of lines that run closer than a print can keep apart. A line is taken out where it has a neighbour on either side
 * that is closer than the limit and stays. Lines are looked at in order across the bundle, so of a regular one every second, or
 * third, stays all along; in a bundle that closes toward a vanishing point lines end where it becomes too dense.
 */
final class Clutter {
    /** Lines whose directions differ by less than this sine, some 6 degrees, run side by side. */
    private static final double SIDE_BY_SIDE = 0.1;

    /** A stretch shorter than this many limits is not worth a break in a line. */
    private static final double LEAST_STRETCH = 5;

    private static final double ANGLE_STEP = Math.toRadians(5);

    private final LinePieces pieces;
    private final double limit;
    private final SegmentGrid grid;

    /** What is left of a piece as stretches in mm from its end 0; null for all of it. */
    private final Stretches[] left;

    private final Stretches onLeft = new Stretches();
    private final Stretches onRight = new Stretches();
    private int thinned;

    private Clutter(LinePieces pieces, double limit, int[] lines) {
        this.pieces = pieces;
        this.limit = limit;
        this.grid = new SegmentGrid(pieces, lines, limit);
        this.left = new Stretches[pieces.size()];
    }

    /**
     * Thins bundles.
     *
     * @param limit in mm, from the middle of one line to the middle of the next
     * @return how many stretches were taken out
     */
    static int thin(LinePieces pieces, double limit) {
        int[] lines = pieces.lines();
        Clutter clutter = new Clutter(pieces, limit, lines);
        for (int k : acrossBundles(pieces, lines)) {
            clutter.thin(k);
        }
        clutter.replace(lines);
        return clutter.thinned;
    }

    /** By direction, roughly, then by where the line passes the origin. */
    private static int[] acrossBundles(LinePieces pieces, int[] lines) {
        double[] place = new double[pieces.size()];
        for (int k : lines) {
            double dx = pieces.x(2 * k + 1) - pieces.x(2 * k);
            double dy = pieces.y(2 * k + 1) - pieces.y(2 * k);
            double angle = Math.atan2(dy, dx);
            double upright = angle < 0 ? angle + Math.PI : angle;
            double step = Math.floor(upright / ANGLE_STEP);
            double across = (dx * pieces.y(2 * k) - dy * pieces.x(2 * k)) / Math.max(1e-9, Math.hypot(dx, dy));
            place[k] = step * 1e6 + across * (angle == upright ? 1 : -1);
        }
        return Arrays.stream(lines)
                .boxed()
                .sorted((a, b) -> Double.compare(place[a], place[b]))
                .mapToInt(k -> k)
                .toArray();
    }

    private void thin(int k) {
        double length = pieces.span(k);
        if (length < LEAST_STRETCH * limit) {
            return;
        }
        onLeft.clear();
        onRight.clear();
        int near = grid.near(pieces.x(2 * k), pieces.y(2 * k), pieces.x(2 * k + 1), pieces.y(2 * k + 1));
        for (int n = 0; n < near; n++) {
            if (grid.found(n) != k) {
                neighbour(k, length, grid.found(n));
            }
        }
        if (onLeft.count() == 0 || onRight.count() == 0) {
            return;
        }
        onLeft.unite();
        onRight.unite();
        Stretches dense = onLeft.within(onRight);
        Stretches out = new Stretches();
        for (int n = 0; n < dense.count(); n++) {
            if (dense.high(n) - dense.low(n) >= LEAST_STRETCH * limit) {
                out.add(dense.low(n), dense.high(n));
                thinned++;
            }
        }
        if (out.count() > 0) {
            left[k] = out.rest(length, limit);
        }
    }

    /** Notes along which stretches another piece runs close beside a piece, and on which side. */
    private void neighbour(int k, double length, int other) {
        double x = pieces.x(2 * k);
        double y = pieces.y(2 * k);
        double ux = (pieces.x(2 * k + 1) - x) / length;
        double uy = (pieces.y(2 * k + 1) - y) / length;
        double span = pieces.span(other);
        double vx = (pieces.x(2 * other + 1) - pieces.x(2 * other)) / span;
        double vy = (pieces.y(2 * other + 1) - pieces.y(2 * other)) / span;
        double cosine = ux * vx + uy * vy;
        double sine = ux * vy - uy * vx;
        if (!(Math.abs(sine) < SIDE_BY_SIDE)) {
            return;
        }
        double px = pieces.x(2 * other) - x;
        double py = pieces.y(2 * other) - y;
        double along = ux * px + uy * py;
        double across = ux * py - uy * px;
        int parts = left[other] == null ? 1 : left[other].count();
        for (int n = 0; n < parts; n++) {
            double from = along + cosine * (left[other] == null ? 0 : left[other].low(n));
            double to = along + cosine * (left[other] == null ? span : left[other].high(n));
            double low = Math.max(0, Math.min(from, to));
            double high = Math.min(length, Math.max(from, to));
            double slope = sine / cosine;
            side(onLeft, low, high, across - slope * along, slope);
            side(onRight, low, high, slope * along - across, -slope);
        }
    }

    /** Adds the part of a range where a distance that grows evenly, from its value at 0, lies between 0 and the limit. */
    private void side(Stretches stretches, double low, double high, double atZero, double slope) {
        if (slope == 0) {
            if (atZero > 0 && atZero < limit) {
                stretches.add(low, high);
            }
            return;
        }
        double atNothing = -atZero / slope;
        double atLimit = (limit - atZero) / slope;
        stretches.add(Math.max(low, Math.min(atNothing, atLimit)), Math.min(high, Math.max(atNothing, atLimit)));
    }

    private void replace(int[] lines) {
        for (int k : lines) {
            if (left[k] != null) {
                double length = pieces.span(k);
                for (int n = 0; n < left[k].count(); n++) {
                    part(k, left[k].low(n) / length, left[k].high(n) / length);
                }
                pieces.remove(k);
            }
        }
    }

    private void part(int k, double from, double to) {
        double x = pieces.x(2 * k);
        double y = pieces.y(2 * k);
        double dx = pieces.x(2 * k + 1) - x;
        double dy = pieces.y(2 * k + 1) - y;
        pieces.line(x + from * dx, y + from * dy, to == 1 ? x + dx : x + to * dx, to == 1 ? y + dy : y + to * dy);
    }
}
