package org.adumbrate.figure.shadow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.View;

/** Where on a canvas a convex body is seen: a convex shape in pixels, and the pixels of each row that it touches. */
final class ScreenShape {
    private final List<RasterPoint> corners;
    private final int top;
    private final int bottom;
    private final double left;
    private final double right;

    private ScreenShape(List<RasterPoint> corners) {
        this.corners = corners;
        this.left = corners.stream().mapToDouble(RasterPoint::x).min().orElse(0);
        this.right = corners.stream().mapToDouble(RasterPoint::x).max().orElse(0);
        this.top = (int)
                Math.floor(corners.stream().mapToDouble(RasterPoint::y).min().orElse(0));
        this.bottom = (int)
                Math.ceil(corners.stream().mapToDouble(RasterPoint::y).max().orElse(0));
    }

    /**
     * Where a body is seen that is the convex hull of some points; what is nearer than a least depth is cut away.
     *
     * @return nothing if all of it is
     */
    static Optional<ScreenShape> of(
            List<ModelPoint> body, View view, double leastDepth, Affine<SheetPoint, RasterPoint> toCanvas) {
        List<RasterPoint> seen = new ArrayList<>();
        for (int k = 0; k < body.size(); k++) {
            ModelPoint p = body.get(k);
            see(p, view, leastDepth, toCanvas, seen);
            for (ModelPoint q : body.subList(k + 1, body.size())) {
                double dp = view.depth(p) - leastDepth;
                double dq = view.depth(q) - leastDepth;
                if (dp * dq < 0) {
                    see(between(p, q, dp / (dp - dq)), view, leastDepth, toCanvas, seen);
                }
            }
        }
        return seen.isEmpty() ? Optional.empty() : Optional.of(new ScreenShape(hull(seen)));
    }

    private static void see(
            ModelPoint p,
            View view,
            double leastDepth,
            Affine<SheetPoint, RasterPoint> toCanvas,
            List<RasterPoint> seen) {
        if (view.depth(p) >= leastDepth * (1 - 1e-9)) {
            view.project(p).map(toCanvas::apply).ifPresent(seen::add);
        }
    }

    private static ModelPoint between(ModelPoint p, ModelPoint q, double t) {
        return new ModelPoint(p.x() + t * (q.x() - p.x()), p.y() + t * (q.y() - p.y()), p.z() + t * (q.z() - p.z()));
    }

    /** The convex hull, by the monotone chain (Andrew, Information Processing Letters 9(5), 1979). */
    private static List<RasterPoint> hull(List<RasterPoint> points) {
        List<RasterPoint> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(RasterPoint::x).thenComparingDouble(RasterPoint::y));
        List<RasterPoint> hull = chain(sorted);
        java.util.Collections.reverse(sorted);
        hull.addAll(chain(sorted));
        return hull;
    }

    private static List<RasterPoint> chain(List<RasterPoint> sorted) {
        List<RasterPoint> chain = new ArrayList<>();
        for (RasterPoint p : sorted) {
            while (chain.size() > 1 && turn(chain.get(chain.size() - 2), chain.get(chain.size() - 1), p) <= 0) {
                chain.remove(chain.size() - 1);
            }
            chain.add(p);
        }
        if (chain.size() > 1) {
            chain.remove(chain.size() - 1);
        }
        return chain;
    }

    private static double turn(RasterPoint a, RasterPoint b, RasterPoint c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }

    /** The first row that it touches. */
    int top() {
        return top;
    }

    /** The row after the last that it touches. */
    int bottom() {
        return bottom;
    }

    /** The leftmost that it reaches, in pixels. */
    double left() {
        return left;
    }

    /** The rightmost that it reaches, in pixels. */
    double right() {
        return right;
    }

    /** The leftmost that it reaches in a row, in pixels; infinite where it does not touch the row. */
    double leftIn(int row) {
        return -farthest(row, -1);
    }

    /** The rightmost that it reaches in a row, in pixels; negative and infinite where it does not touch the row. */
    double rightIn(int row) {
        return farthest(row, 1);
    }

    private double farthest(int row, int side) {
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < corners.size(); k++) {
            RasterPoint a = corners.get(k);
            RasterPoint b = corners.get((k + 1) % corners.size());
            double above = Math.max(Math.min(a.y(), b.y()), row);
            double below = Math.min(Math.max(a.y(), b.y()), row + 1.0);
            if (above <= below) {
                most = Math.max(most, Math.max(side * at(a, b, above), side * at(a, b, below)));
            }
        }
        return most;
    }

    private static double at(RasterPoint a, RasterPoint b, double y) {
        if (a.y() == b.y()) {
            return a.x();
        }
        return a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
    }
}
