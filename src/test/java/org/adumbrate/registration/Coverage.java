package org.adumbrate.registration;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.RasterPoint;

/** The exact share of each pixel that a convex polygon covers: the polygon is clipped to the pixel and its area taken. */
final class Coverage {
    private Coverage() {}

    /** Paints a tone over an image, in proportion to the covered share of each pixel. */
    static void paint(float[] image, int width, int height, List<RasterPoint> polygon, float tone) {
        int bottom = (int) Math.min(height, Math.ceil(most(polygon, false)));
        for (int y = (int) Math.max(0, Math.floor(least(polygon, false))); y < bottom; y++) {
            List<RasterPoint> row = clip(clip(polygon, 0, 1, y), 0, -1, -(y + 1));
            int right = (int) Math.min(width, Math.ceil(most(row, true)));
            for (int x = (int) Math.max(0, Math.floor(least(row, true))); x < right; x++) {
                float share = (float) area(clip(clip(row, 1, 0, x), -1, 0, -(x + 1)));
                image[y * width + x] += share * (tone - image[y * width + x]);
            }
        }
    }

    /** The part of a convex polygon where {@code a x + b y >= c} (Sutherland and Hodgman's clipping). */
    private static List<RasterPoint> clip(List<RasterPoint> polygon, double a, double b, double c) {
        List<RasterPoint> kept = new ArrayList<>();
        for (int k = 0; k < polygon.size(); k++) {
            RasterPoint p = polygon.get(k);
            RasterPoint q = polygon.get((k + 1) % polygon.size());
            double fp = a * p.x() + b * p.y() - c;
            double fq = a * q.x() + b * q.y() - c;
            if (fp >= 0) {
                kept.add(p);
            }
            if (fp * fq < 0) {
                double t = fp / (fp - fq);
                kept.add(new RasterPoint(p.x() + t * (q.x() - p.x()), p.y() + t * (q.y() - p.y())));
            }
        }
        return kept;
    }

    private static double area(List<RasterPoint> polygon) {
        double twice = 0;
        for (int k = 0; k < polygon.size(); k++) {
            RasterPoint p = polygon.get(k);
            RasterPoint q = polygon.get((k + 1) % polygon.size());
            twice += p.x() * q.y() - q.x() * p.y();
        }
        return Math.abs(twice) / 2;
    }

    private static double least(List<RasterPoint> polygon, boolean x) {
        return polygon.stream().mapToDouble(p -> x ? p.x() : p.y()).min().orElse(0);
    }

    private static double most(List<RasterPoint> polygon, boolean x) {
        return polygon.stream().mapToDouble(p -> x ? p.x() : p.y()).max().orElse(0);
    }
}
