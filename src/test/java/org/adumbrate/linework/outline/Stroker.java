package org.adumbrate.linework.outline;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** Turns lines into the filled shapes that they look like, by the stroker of the Java library. */
final class Stroker {
    private Stroker() {}

    /** The outline of a line of some width. */
    static VectorPath<PagePoint> outline(VectorPath<PagePoint> line, double width, int cap, int join) {
        Path2D.Double path = new Path2D.Double();
        line.visit(new VectorPath.Visitor() {
            @Override
            public void moveTo(double x, double y) {
                path.moveTo(x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                path.lineTo(x, y);
            }

            @Override
            public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                path.curveTo(x1, y1, x2, y2, x, y);
            }

            @Override
            public void close() {
                path.closePath();
            }
        });
        // the stroker works with half pixels in mind: at a hundredfold size it is exact
        Shape shape = new BasicStroke((float) (100 * width), cap, join, 10)
                .createStrokedShape(
                        java.awt.geom.AffineTransform.getScaleInstance(100, 100).createTransformedShape(path));
        return path(shape, 0.01);
    }

    static VectorPath<PagePoint> path(Shape shape, double scale) {
        VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator at = shape.getPathIterator(null); !at.isDone(); at.next()) {
            int step = at.currentSegment(c);
            for (int k = 0; k < 6; k++) {
                c[k] *= scale;
            }
            switch (step) {
                case PathIterator.SEG_MOVETO -> path.moveTo(c[0], c[1]);
                case PathIterator.SEG_LINETO -> path.lineTo(c[0], c[1]);
                case PathIterator.SEG_QUADTO ->
                    path.curveTo(
                            x + 2 * (c[0] - x) / 3,
                            y + 2 * (c[1] - y) / 3,
                            c[2] + 2 * (c[0] - c[2]) / 3,
                            c[3] + 2 * (c[1] - c[3]) / 3,
                            c[2],
                            c[3]);
                case PathIterator.SEG_CUBICTO -> path.curveTo(c[0], c[1], c[2], c[3], c[4], c[5]);
                default -> path.close();
            }
            int last = step == PathIterator.SEG_CUBICTO ? 4 : step == PathIterator.SEG_QUADTO ? 2 : 0;
            if (step != PathIterator.SEG_CLOSE) {
                x = c[last];
                y = c[last + 1];
            }
        }
        return path.build();
    }

    /** How far any point of one path lies from another, in mm, the greater of both ways (Hausdorff). */
    static double distance(VectorPath<PagePoint> a, VectorPath<PagePoint> b) {
        return Math.max(oneWay(a, b), oneWay(b, a));
    }

    private static double oneWay(VectorPath<PagePoint> from, VectorPath<PagePoint> to) {
        List<double[]> chords = new ArrayList<>();
        to.chords(1e-4, (x0, y0, x1, y1) -> chords.add(new double[] {x0, y0, x1, y1}));
        double[] most = {0};
        from.chords(1e-4, (x0, y0, x1, y1) -> {
            int steps = (int) Math.max(1, Math.ceil(Math.hypot(x1 - x0, y1 - y0) / 0.1));
            for (int k = 0; k <= steps; k++) {
                double px = x0 + (x1 - x0) * k / steps;
                double py = y0 + (y1 - y0) * k / steps;
                most[0] = Math.max(
                        most[0],
                        chords.stream()
                                .mapToDouble(chord -> distance(px, py, chord))
                                .min()
                                .orElse(Double.POSITIVE_INFINITY));
            }
        });
        return most[0];
    }

    private static double distance(double px, double py, double[] chord) {
        double dx = chord[2] - chord[0];
        double dy = chord[3] - chord[1];
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : ((px - chord[0]) * dx + (py - chord[1]) * dy) / square;
        double within = Math.max(0, Math.min(1, t));
        return Math.hypot(px - chord[0] - within * dx, py - chord[1] - within * dy);
    }
}
