package org.adumbrate.raster.trace;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The straight stretches of a line of many points: it is halved where it bends most until each stretch keeps to its chord (Ramer,
 * Computer Graphics and Image Processing 1, 1972; Douglas and Peucker, 1973), and what is left is fitted by orthogonal regression,
 * without its ends, which corners round off.
 */
public final class StraightStretches {
    private final double[] points;
    private final double tolerance;
    private final double shortest;
    private final double trimmed;
    private final List<Stretch> found = new ArrayList<>();

    /**
     * A straight stretch.
     *
     * @param x0 where it begins
     * @param y0 where it begins
     * @param x1 where it ends
     * @param y1 where it ends
     * @param rms how far the points lie beside it, as a root mean square
     */
    public record Stretch(double x0, double y0, double x1, double y1, double rms) {}

    private StraightStretches(double[] points, double tolerance, double shortest, double trimmed) {
        this.points = points;
        this.tolerance = tolerance;
        this.shortest = shortest;
        this.trimmed = trimmed;
    }

    /**
     * Finds the stretches.
     *
     * @param points x0 y0 x1 y1 ...; of a closed line the last is the first
     * @param tolerance how far points may lie beside the chord of their stretch
     * @param shortest shorter stretches are left out
     * @param trimmed so much is left out of the fit at either end
     */
    public static List<Stretch> of(double[] points, double tolerance, double shortest, double trimmed) {
        StraightStretches stretches = new StraightStretches(points, tolerance, shortest, trimmed);
        stretches.halve();
        return stretches.found;
    }

    private void halve() {
        Deque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {0, points.length / 2 - 1});
        while (!open.isEmpty()) {
            int[] range = open.pop();
            int bend = range[1] - range[0] < 4 ? -1 : bend(range[0], range[1]);
            if (bend < 0) {
                fit(range[0], range[1]);
            } else {
                open.push(new int[] {bend, range[1]});
                open.push(new int[] {range[0], bend});
            }
        }
    }

    /** The point that lies farthest from the chord; -1 if that is near enough. */
    private int bend(int first, int last) {
        double dx = x(last) - x(first);
        double dy = y(last) - y(first);
        double length = Math.hypot(dx, dy);
        int farthest = -1;
        double most = tolerance;
        for (int k = first + 1; k < last; k++) {
            double vx = x(k) - x(first);
            double vy = y(k) - y(first);
            double off = length > 1e-9 ? Math.abs(vx * dy - vy * dx) / length : Math.hypot(vx, vy);
            if (off > most) {
                most = off;
                farthest = k;
            }
        }
        return farthest;
    }

    private void fit(int first, int last) {
        double ux = x(last) - x(first);
        double uy = y(last) - y(first);
        double length = Math.hypot(ux, uy);
        if (length < shortest) {
            return;
        }
        ux /= length;
        uy /= length;
        double sx = 0;
        double sy = 0;
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double from = Double.MAX_VALUE;
        double to = -Double.MAX_VALUE;
        int count = 0;
        for (int k = first; k <= last; k++) {
            double vx = x(k) - x(first);
            double vy = y(k) - y(first);
            double along = vx * ux + vy * uy;
            if (along > trimmed && along < length - trimmed) {
                sx += vx;
                sy += vy;
                xx += vx * vx;
                xy += vx * vy;
                yy += vy * vy;
                from = Math.min(from, along);
                to = Math.max(to, along);
                count++;
            }
        }
        if (count < 6) {
            return;
        }
        double mx = sx / count;
        double my = sy / count;
        xx = xx / count - mx * mx;
        xy = xy / count - mx * my;
        yy = yy / count - my * my;
        double turn = Math.atan2(2 * xy, xx - yy) / 2;
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        double across = xx * sin * sin - 2 * xy * sin * cos + yy * cos * cos;
        double middle = mx * ux + my * uy;
        double way = Math.signum(cos * ux + sin * uy);
        double back = (from - middle) * way;
        double on = (to - middle) * way;
        found.add(new Stretch(
                x(first) + mx + back * cos,
                y(first) + my + back * sin,
                x(first) + mx + on * cos,
                y(first) + my + on * sin,
                Math.sqrt(Math.max(0, across))));
    }

    private double x(int k) {
        return points[2 * k];
    }

    private double y(int k) {
        return points[2 * k + 1];
    }
}
