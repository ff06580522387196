package org.adumbrate.linework.outline;

import java.util.Optional;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** A straight line with round ends: all points of its rim are as far from the line. It may be much shorter than it is wide. */
final class Capsule {
    /** Shorter than so many widths it is a dot. */
    private static final double SHORTEST = 0.04;

    private Capsule() {}

    static Optional<OutlinedLine> of(Rim rim, VectorPath<PagePoint> outline) {
        double angle = axis(rim);
        double ux = Math.cos(angle);
        double uy = Math.sin(angle);
        double[] along = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        double[] across = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int k = 0; k < rim.size(); k++) {
            widen(along, ux * rim.x(k) + uy * rim.y(k));
            widen(across, ux * rim.y(k) - uy * rim.x(k));
        }
        double width = across[1] - across[0];
        double length = along[1] - along[0] - width;
        if (!Widths.isLine(width) || length < SHORTEST * width) {
            return Optional.empty();
        }
        double from = along[0] + width / 2;
        double middle = (across[0] + across[1]) / 2;
        double tolerance = Widths.tolerance(width) / 2;
        for (int k = 0; k < rim.size(); k++) {
            double a = ux * rim.x(k) + uy * rim.y(k) - from;
            double c = ux * rim.y(k) - uy * rim.x(k) - middle;
            double off = Math.hypot(a - Math.max(0, Math.min(length, a)), c);
            if (Math.abs(off - width / 2) > tolerance) {
                return Optional.empty();
            }
        }
        VectorPath.Builder<PagePoint> line = VectorPath.in(Space.PAGE);
        line.moveTo(ux * from - uy * middle, uy * from + ux * middle);
        line.lineTo(ux * (from + length) - uy * middle, uy * (from + length) + ux * middle);
        return Optional.of(
                new OutlinedLine(outline, line.build(), length, width, LineCap.ROUND, /* across= */ Optional.empty()));
    }

    private static void widen(double[] span, double to) {
        span[0] = Math.min(span[0], to);
        span[1] = Math.max(span[1], to);
    }

    /** The direction in which a shape is longest: the principal axis of its second moments of area. */
    private static double axis(Rim rim) {
        double area = 0;
        double[] first = new double[2];
        double[] second = new double[3];
        double ox = rim.x(0);
        double oy = rim.y(0);
        for (int k = 0; k < rim.size(); k++) {
            double x0 = rim.x(k) - ox;
            double y0 = rim.y(k) - oy;
            double x1 = rim.x(k + 1) - ox;
            double y1 = rim.y(k + 1) - oy;
            double cross = x0 * y1 - x1 * y0;
            area += cross / 2;
            first[0] += cross * (x0 + x1) / 6;
            first[1] += cross * (y0 + y1) / 6;
            second[0] += cross * (x0 * x0 + x0 * x1 + x1 * x1) / 12;
            second[1] += cross * (x0 * y1 + 2 * x0 * y0 + 2 * x1 * y1 + x1 * y0) / 24;
            second[2] += cross * (y0 * y0 + y0 * y1 + y1 * y1) / 12;
        }
        double sign = area < 0 ? -1 : 1;
        double xx = sign * (second[0] - first[0] * first[0] / area);
        double xy = sign * (second[1] - first[0] * first[1] / area);
        double yy = sign * (second[2] - first[1] * first[1] / area);
        return Math.atan2(2 * xy, xx - yy) / 2;
    }
}
