package org.adumbrate.linework.svg;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;

/**
 * The vertices of a path, and the way that it comes to each and leaves it (SVG 2, 13.7.5).
 */
final class SvgVertices implements PieceVisitor {
    /** A vertex; its directions in radians, not a number where there is none. */
    record Vertex(double x, double y, double in, double out) {
        /** The way between coming and leaving. */
        double direction() {
            if (Double.isNaN(in) || Double.isNaN(out)) {
                return Double.isNaN(in) ? Double.isNaN(out) ? 0 : out : in;
            }
            double difference = out - in;
            // halfway round by the shorter side
            double turn = Math.atan2(Math.sin(difference), Math.cos(difference));
            return in + turn / 2;
        }
    }

    /** Where steps of the path data end, in order; empty if every piece is a step. */
    private final Optional<List<Point2D>> steps;

    private final List<Vertex> vertices = new ArrayList<>();
    private int step;
    private int first;

    private SvgVertices(Optional<List<Point2D>> steps) {
        this.steps = steps;
    }

    /** @param steps where steps of the path data end, in order; empty if every piece is a step */
    static List<Vertex> of(org.adumbrate.geometry.VectorPath<?> path, Optional<List<Point2D>> steps) {
        SvgVertices found = new SvgVertices(steps);
        path.pieces(found);
        return found.vertices;
    }

    @Override
    public void begin(double x, double y) {
        first = vertices.size();
        vertices.add(new Vertex(x, y, Double.NaN, Double.NaN));
    }

    @Override
    public void piece(PathPiece piece) {
        double leaving = leaving(piece);
        double coming = coming(piece);
        leave(vertices.size() - 1, leaving);
        if (isStep(piece.x3(), piece.y3())) {
            vertices.add(new Vertex(piece.x3(), piece.y3(), coming, Double.NaN));
        }
    }

    @Override
    public void closing(PathPiece piece) {
        piece(piece);
    }

    @Override
    public void end(boolean closed) {
        if (closed && vertices.size() - 1 > first) {
            Vertex begin = vertices.get(first);
            Vertex last = vertices.get(vertices.size() - 1);
            leave(vertices.size() - 1, begin.out);
            vertices.set(first, new Vertex(begin.x, begin.y, last.in, begin.out));
        }
    }

    private void leave(int k, double out) {
        Vertex vertex = vertices.get(k);
        if (Double.isNaN(vertex.out)) {
            vertices.set(k, new Vertex(vertex.x, vertex.y, vertex.in, out));
        }
    }

    private boolean isStep(double x, double y) {
        if (steps.isEmpty()) {
            return true;
        }
        List<Point2D> ends = steps.get();
        for (int k = step; k < ends.size() && k < step + 3; k++) {
            if (ends.get(k).getX() == x && ends.get(k).getY() == y) {
                step = k + 1;
                return true;
            }
        }
        return false;
    }

    /** The direction of the first part of a piece that has a length. */
    private static double leaving(PathPiece piece) {
        double[] xs = {piece.x1(), piece.x2(), piece.x3()};
        double[] ys = {piece.y1(), piece.y2(), piece.y3()};
        for (int k = 0; k < 3; k++) {
            if (xs[k] != piece.x0() || ys[k] != piece.y0()) {
                return Math.atan2(ys[k] - piece.y0(), xs[k] - piece.x0());
            }
        }
        return Double.NaN;
    }

    /** The direction of the last part of a piece that has a length. */
    private static double coming(PathPiece piece) {
        double[] xs = {piece.x2(), piece.x1(), piece.x0()};
        double[] ys = {piece.y2(), piece.y1(), piece.y0()};
        for (int k = 0; k < 3; k++) {
            if (xs[k] != piece.x3() || ys[k] != piece.y3()) {
                return Math.atan2(piece.y3() - ys[k], piece.x3() - xs[k]);
            }
        }
        return Double.NaN;
    }
}
