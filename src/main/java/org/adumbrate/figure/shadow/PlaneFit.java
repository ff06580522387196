package org.adumbrate.figure.shadow;

import org.adumbrate.figure.depth.DepthMap;

/**
 * The plane on which a pixel of a depth pass and its neighbours lie, along the row and along the column by themselves: over a
 * plane the inverse of depth changes evenly. Neighbours count as far as they go on evenly, to within what the file's steps
 * allow; where a surface ends, the side that goes on counts alone.
 */
final class PlaneFit {
    /** As many neighbours to a side as take the noise of 16-bit depth out of a gradient. */
    private static final int REACH = 4;

    /** Single precision, and little more. */
    private static final double ROUNDING = 3e-7;

    /** A bend this many times the gentler of its neighbours is an edge. */
    private static final double EDGE = 3;

    /** A change of depth from one pixel to the next, as a share of it, that leads to another surface. */
    private static final double STEEPEST = 0.01;

    private final DepthMap depth;
    private int column = -1;
    private int row = -1;
    private double inverse;
    private double across;
    private double down;

    /** Fitted along one direction. */
    private double level;

    private double slope;
    private final double[] line = new double[2 * REACH + 1];

    PlaneFit(DepthMap depth) {
        this.depth = depth;
    }

    /** 1 / depth in the pixel's middle, in 1/m. */
    double inverse() {
        return inverse;
    }

    /** Its change from a pixel to the next in the row. */
    double across() {
        return across;
    }

    /** Its change from a pixel to the next below. */
    double down() {
        return down;
    }

    /** Turns to a pixel, which must see something. */
    void turnTo(int x, int y) {
        if (x == column && y == row) {
            return;
        }
        column = x;
        row = y;
        double own = depth.inverse(x, y);
        // Half a step either way at three pixels, one of them twice: two steps in a second difference.
        double even = 2.1 * depth.step() * own * own + ROUNDING * own;
        for (int k = -REACH; k <= REACH; k++) {
            boolean within = x + k >= 0 && x + k < depth.size().width();
            line[k + REACH] = within ? depth.inverse(x + k, y) : 0;
        }
        fitLine(even);
        inverse = level;
        across = slope;
        for (int k = -REACH; k <= REACH; k++) {
            boolean within = y + k >= 0 && y + k < depth.size().height();
            line[k + REACH] = within ? depth.inverse(x, y + k) : 0;
        }
        fitLine(even);
        inverse += level - own;
        down = slope;
    }

    private void fitLine(double even) {
        int before = goesOn(-1, even);
        int after = goesOn(1, even);
        double here = bend(0);
        if (here <= even && Math.min(before, after) > 0) {
            symmetric(Math.min(before, after));
        } else if (here < STEEPEST * at(0) && here <= EDGE * Math.min(bend(-1), bend(1)) + even) {
            level = line[REACH];
            slope = (at(1) - at(-1)) / 2;
        } else {
            level = line[REACH];
            slope = before == after ? gentler() : before > after ? oneSided(-before) : oneSided(after);
        }
    }

    private double at(int k) {
        return line[REACH + k];
    }

    /** The size of the second difference about a neighbour; infinite where one of the three sees nothing. */
    private double bend(int k) {
        boolean seen = at(k - 1) > 0 && at(k) > 0 && at(k + 1) > 0;
        return seen ? Math.abs(at(k - 1) - 2 * at(k) + at(k + 1)) : Double.POSITIVE_INFINITY;
    }

    /** How many neighbours to a side lie on one line with the pixel: none, or two or more. */
    private int goesOn(int side, double even) {
        int k = 1;
        while (k < REACH && bend(k * side) <= even) {
            k++;
        }
        return k == 1 ? 0 : k;
    }

    /** Least squares over as many pixels to both sides. */
    private void symmetric(int n) {
        double sum = at(0);
        double moment = 0;
        double squares = 0;
        for (int k = 1; k <= n; k++) {
            sum += at(k) + at(-k);
            moment += k * (at(k) - at(-k));
            squares += 2.0 * k * k;
        }
        level = sum / (2 * n + 1);
        slope = moment / squares;
    }

    private double oneSided(int k) {
        return k == 0 ? gentler() : (at(k) - at(0)) / k;
    }

    /**
     * Where neither side is known to go on, as in a rail two pixels high, the smaller of the two steps; none where both are so
     * large that they must lead to other surfaces.
     */
    private double gentler() {
        double before = at(-1) > 0 ? at(0) - at(-1) : Double.POSITIVE_INFINITY;
        double after = at(1) > 0 ? at(1) - at(0) : Double.POSITIVE_INFINITY;
        double least = Math.abs(before) < Math.abs(after) ? before : after;
        return Math.abs(least) < STEEPEST * at(0) ? least : 0;
    }
}
