package org.adumbrate.registration;

import java.util.Arrays;
import org.adumbrate.geometry.VectorPath;

/** Collects the straight pieces of paths, as x0 y0 x1 y1 in a row; curves are cut finely enough to stay within 0.01 mm. */
final class Flattening implements VectorPath.Visitor {
    private static final double TOLERANCE_MM = 0.01;
    private static final int MOST_CUTS = 64;

    private double[] pieces = new double[1024];
    private int used;
    private double startX;
    private double startY;
    private double x;
    private double y;

    double[] pieces() {
        return Arrays.copyOf(pieces, used);
    }

    @Override
    public void moveTo(double toX, double toY) {
        startX = x = toX;
        startY = y = toY;
    }

    @Override
    public void lineTo(double toX, double toY) {
        if (used == pieces.length) {
            pieces = Arrays.copyOf(pieces, 2 * used);
        }
        pieces[used++] = x;
        pieces[used++] = y;
        pieces[used++] = x = toX;
        pieces[used++] = y = toY;
    }

    /** A curve strays from n equal chords by at most the second difference of its control points times 3/4 over n². */
    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        double x0 = x;
        double y0 = y;
        double bend = Math.max(
                Math.hypot(x0 - 2 * x1 + x2, y0 - 2 * y1 + y2), Math.hypot(x1 - 2 * x2 + toX, y1 - 2 * y2 + toY));
        int cuts = (int) Math.min(MOST_CUTS, Math.ceil(Math.sqrt(0.75 * bend / TOLERANCE_MM)));
        for (int k = 1; k < cuts; k++) {
            double t = (double) k / cuts;
            double s = 1 - t;
            double a = s * s * s;
            double b = 3 * s * s * t;
            double c = 3 * s * t * t;
            double d = t * t * t;
            lineTo(a * x0 + b * x1 + c * x2 + d * toX, a * y0 + b * y1 + c * y2 + d * toY);
        }
        lineTo(toX, toY);
    }

    @Override
    public void close() {
        lineTo(startX, startY);
    }
}
