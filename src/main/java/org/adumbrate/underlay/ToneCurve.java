package org.adumbrate.underlay;

import java.util.List;

/**
 * A curve from the light of a pass to the light it prints with, through given points, rising or falling only where the
 * points do: monotone cubic interpolation (Fritsch and Carlson, SIAM J. Numer. Anal. 17(2), 1980). Level before the first
 * point and after the last.
 */
public final class ToneCurve {
    /**
     * A point of the curve.
     *
     * @param in light of the pass, 0 to 1
     * @param out light it prints with, 0 to 1
     */
    public record Point(double in, double out) {}

    /** Leaves every tone as it is. */
    public static final ToneCurve STRAIGHT = new ToneCurve(new float[0]);

    private static final int STEPS = 4096;

    private final float[] table;

    private ToneCurve(float[] table) {
        this.table = table;
    }

    /**
     * The curve through some points.
     *
     * @param points two or more, in ascending order of {@code in}, all within 0 to 1
     * @throws IllegalArgumentException if they are not
     */
    public static ToneCurve through(List<Point> points) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("a tone curve needs two points or more");
        }
        for (int k = 0; k < points.size(); k++) {
            Point p = points.get(k);
            boolean ascends = k == 0 || p.in > points.get(k - 1).in;
            if (!ascends || !(p.in >= 0 && p.in <= 1 && p.out >= 0 && p.out <= 1)) {
                throw new IllegalArgumentException("tone points must ascend within 0 to 1");
            }
        }
        double[] slopes = slopes(points);
        float[] table = new float[STEPS + 2];
        for (int k = 0; k <= STEPS; k++) {
            table[k] = (float) value(points, slopes, k / (double) STEPS);
        }
        table[STEPS + 1] = table[STEPS];
        return new ToneCurve(table);
    }

    private static double[] slopes(List<Point> points) {
        int n = points.size();
        double[] chords = new double[n - 1];
        for (int k = 0; k < n - 1; k++) {
            chords[k] = (points.get(k + 1).out - points.get(k).out) / (points.get(k + 1).in - points.get(k).in);
        }
        double[] slopes = new double[n];
        slopes[0] = chords[0];
        slopes[n - 1] = chords[n - 2];
        for (int k = 1; k < n - 1; k++) {
            slopes[k] = chords[k - 1] * chords[k] <= 0 ? 0 : (chords[k - 1] + chords[k]) / 2;
        }
        for (int k = 0; k < n - 1; k++) {
            limit(slopes, chords, k);
        }
        return slopes;
    }

    /** Keeps the two slopes of one piece within the circle of radius 3 chords in which a cubic cannot turn back. */
    private static void limit(double[] slopes, double[] chords, int k) {
        if (chords[k] == 0) {
            slopes[k] = slopes[k + 1] = 0;
            return;
        }
        double a = slopes[k] / chords[k];
        double b = slopes[k + 1] / chords[k];
        double radius = Math.hypot(a, b);
        if (radius > 3) {
            slopes[k] = 3 * a / radius * chords[k];
            slopes[k + 1] = 3 * b / radius * chords[k];
        }
    }

    private static double value(List<Point> points, double[] slopes, double x) {
        int n = points.size();
        if (x <= points.get(0).in) {
            return points.get(0).out;
        }
        if (x >= points.get(n - 1).in) {
            return points.get(n - 1).out;
        }
        int k = 0;
        while (x > points.get(k + 1).in) {
            k++;
        }
        Point p = points.get(k);
        Point q = points.get(k + 1);
        double h = q.in - p.in;
        double t = (x - p.in) / h;
        double rest = 1 - t;
        return p.out * (1 + 2 * t) * rest * rest
                + slopes[k] * h * t * rest * rest
                + q.out * t * t * (3 - 2 * t)
                + slopes[k + 1] * h * t * t * (t - 1);
    }

    /** True when it changes nothing. */
    public boolean isStraight() {
        return table.length == 0;
    }

    /** The light that it gives at even steps of light from 0 to 1, the last one twice; straight lines lie between. Empty if it is straight. */
    public float[] steps() {
        return table.clone();
    }

    /** Bends one value, 0 to 1. */
    public float bend(float light) {
        if (isStraight()) {
            return light;
        }
        float position = light * STEPS;
        int step = (int) position;
        return table[step] + (position - step) * (table[step + 1] - table[step]);
    }

    /** Bends a row of values, each 0 to 1, in place. */
    void bend(float[] light, int count) {
        if (!isStraight()) {
            for (int k = 0; k < count; k++) {
                light[k] = bend(light[k]);
            }
        }
    }
}
