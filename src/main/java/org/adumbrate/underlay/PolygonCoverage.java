package org.adumbrate.underlay;

import java.util.List;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/**
 * The share of each canvas pixel that lies inside polygons, exactly by area, one row at a time (even-odd where polygons
 * overlap an even number of times is counted as their union: shares are added up and cut off at 1).
 */
final class PolygonCoverage {
    private final double[][] xs;
    private final double[][] ys;

    PolygonCoverage(List<List<SheetPoint>> polygons, Affine<SheetPoint, RasterPoint> toCanvas) {
        xs = new double[polygons.size()][];
        ys = new double[polygons.size()][];
        for (int k = 0; k < polygons.size(); k++) {
            List<SheetPoint> polygon = polygons.get(k);
            xs[k] = new double[polygon.size() + 1];
            ys[k] = new double[polygon.size() + 1];
            for (int j = 0; j <= polygon.size(); j++) {
                SheetPoint p = polygon.get(j % polygon.size());
                xs[k][j] = toCanvas.mapX(p.x(), p.y());
                ys[k][j] = toCanvas.mapY(p.x(), p.y());
            }
        }
    }

    /** The shares of the pixels of row y. */
    void row(int y, float[] share, int width) {
        java.util.Arrays.fill(share, 0, width, 0);
        double[] area = new double[width + 1];
        for (int k = 0; k < xs.length; k++) {
            java.util.Arrays.fill(area, 0);
            for (int j = 0; j + 1 < xs[k].length; j++) {
                edge(xs[k][j], ys[k][j], xs[k][j + 1], ys[k][j + 1], y, area, width);
            }
            double sum = 0;
            for (int x = 0; x < width; x++) {
                sum += area[x];
                share[x] = Math.min(1, share[x] + (float) Math.min(1, Math.abs(sum)));
            }
        }
    }

    /**
     * Adds what one edge contributes to a row: the signed area to the right of it, as differences from pixel to pixel, so
     * that their running sum is the area inside.
     */
    private static void edge(double ax, double ay, double bx, double by, int y, double[] area, int width) {
        if (ay == by) {
            return;
        }
        double sign = ay < by ? 1 : -1;
        double topX = ay < by ? ax : bx;
        double topY = Math.min(ay, by);
        double bottomX = ay < by ? bx : ax;
        double bottomY = Math.max(ay, by);
        double from = Math.max(topY, y);
        double to = Math.min(bottomY, y + 1);
        if (from >= to) {
            return;
        }
        double slope = (bottomX - topX) / (bottomY - topY);
        double x0 = topX + slope * (from - topY);
        double x1 = topX + slope * (to - topY);
        spread(Math.min(x0, x1), Math.max(x0, x1), sign * (to - from), area, width);
    }

    /** Spreads an edge's height over the pixels that it crosses between two places of a row. */
    private static void spread(double left, double right, double height, double[] area, int width) {
        if (right <= 0) {
            area[0] += height;
            return;
        }
        double covered = 0;
        int first = (int) Math.max(0, Math.floor(left));
        for (int x = first; x < width; x++) {
            double until = right - left < 1e-12 ? Math.max(0, Math.min(1, x + 1 - left)) : rightOf(left, right, x);
            area[x] += height * (until - covered);
            covered = until;
            if (x >= right) {
                break;
            }
        }
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
