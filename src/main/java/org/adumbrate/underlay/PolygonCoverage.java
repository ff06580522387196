package org.adumbrate.underlay;

import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/**
 * The share of each canvas pixel that lies inside polygons, exactly by area, one row at a time (even-odd where polygons
 * overlap an even number of times is counted as their union: shares are added up and cut off at 1). Areas are counted in whole
 * units of 2^-40 pixel, so that what lies left of a window counts the same in one sum as pixel by pixel. For use by one thread.
 */
final class PolygonCoverage {
    private static final double UNITS = 0x1p40;

    private final PixelBox window;
    private final long[] area;
    private final double[][] xs;
    private final double[][] ys;

    PolygonCoverage(List<List<SheetPoint>> polygons, Canvas canvas) {
        Affine<SheetPoint, RasterPoint> toPixels = canvas.toPixels();
        window = canvas.window();
        area = new long[window.width()];
        xs = new double[polygons.size()][];
        ys = new double[polygons.size()][];
        for (int k = 0; k < polygons.size(); k++) {
            List<SheetPoint> polygon = polygons.get(k);
            xs[k] = new double[polygon.size() + 1];
            ys[k] = new double[polygon.size() + 1];
            for (int j = 0; j <= polygon.size(); j++) {
                SheetPoint p = polygon.get(j % polygon.size());
                xs[k][j] = toPixels.mapX(p.x(), p.y());
                ys[k][j] = toPixels.mapY(p.x(), p.y());
            }
        }
    }

    /** The shares of the window's pixels of row y. */
    void row(int y, float[] share) {
        Arrays.fill(share, 0, window.width(), 0);
        for (int k = 0; k < xs.length; k++) {
            Arrays.fill(area, 0);
            boolean reached = false;
            for (int j = 0; j + 1 < xs[k].length; j++) {
                reached |= edge(xs[k][j], ys[k][j], xs[k][j + 1], ys[k][j + 1], y);
            }
            if (reached) {
                add(share);
            }
        }
    }

    private void add(float[] share) {
        long sum = 0;
        for (int x = 0; x < area.length; x++) {
            sum += area[x];
            share[x] = Math.min(1, share[x] + (float) Math.min(1, Math.abs(sum / UNITS)));
        }
    }

    /**
     * Adds what one edge contributes to a row: the signed area to the right of it, as differences from pixel to pixel, so
     * that their running sum is the area inside.
     *
     * @return whether the edge reaches the row
     */
    private boolean edge(double ax, double ay, double bx, double by, int y) {
        if (ay == by) {
            return false;
        }
        double sign = ay < by ? 1 : -1;
        double topX = ay < by ? ax : bx;
        double topY = Math.min(ay, by);
        double bottomX = ay < by ? bx : ax;
        double bottomY = Math.max(ay, by);
        double from = Math.max(topY, y);
        double to = Math.min(bottomY, y + 1.0);
        if (from >= to) {
            return false;
        }
        double slope = (bottomX - topX) / (bottomY - topY);
        double x0 = topX + slope * (from - topY);
        double x1 = topX + slope * (to - topY);
        spread(Math.min(x0, x1), Math.max(x0, x1), sign * (to - from));
        return true;
    }

    /** Spreads an edge's height over the pixels that it crosses between two places of a row. */
    private void spread(double left, double right, double height) {
        if (left >= window.right()) {
            return;
        }
        int first = (int) Math.max(window.left(), Math.floor(left));
        int end = (int) Math.min(window.right(), Math.floor(right) + 1);
        long covered = 0;
        for (int x = first; x < end; x++) {
            long until = units(left, right, x, height);
            area[x - window.left()] += until - covered;
            covered = until;
        }
        if (end < window.right()) {
            area[Math.max(end, window.left()) - window.left()] += Math.round(height * UNITS) - covered;
        }
    }

    /** The area of pixel x that lies right of an edge running evenly from left to right, over its height, in units. */
    private static long units(double left, double right, int x, double height) {
        double share = right - left < 1e-12 ? Math.max(0, Math.min(1, x + 1 - left)) : rightOf(left, right, x);
        return Math.round(height * share * UNITS);
    }

    /** The mean share of pixel x that lies right of an edge running evenly from left to right. */
    private static double rightOf(double left, double right, int x) {
        double a = Math.max(left, x);
        double b = Math.min(right, x + 1.0);
        double within = b > a ? (b - a) * (x + 1 - (a + b) / 2) : 0;
        double before = Math.max(0, Math.min(right, x) - left);
        return (within + before) / (right - left);
    }
}
