package org.adumbrate.linework.dashes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Stroke;

/** Writes a row of dashes as one path: straight if all of it is, else along the dashes and on over the gaps. */
final class DashedPath {
    /** Ends may lie so far from a straight line, in mm. */
    private static final double STRAIGHT_MM = 0.02;

    /** Gaps at which a line turns less than this are straight, in radians. */
    private static final double TURN = 0.02;

    private final DashRuns runs;
    private final List<Stroke> strokes;
    private final Rows.Part part;

    DashedPath(DashRuns runs, List<Stroke> strokes, Rows.Part part) {
        this.runs = runs;
        this.strokes = strokes;
        this.part = part;
    }

    VectorPath<PagePoint> path() {
        int from = part.entered(0);
        int count = part.span().count();
        int to = part.entered(count - 1) ^ 1;
        VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
        path.moveTo(runs.x(from), runs.y(from));
        if (isStraight(from, to)) {
            path.lineTo(runs.x(to), runs.y(to));
            return path.build();
        }
        for (int n = 0; n < count; n++) {
            if (n > 0) {
                over(part.entered(n - 1) ^ 1, part.entered(n), path);
            }
            along(part.entered(n)).forEach(piece -> piece.drawOn(path));
        }
        return path.build();
    }

    private boolean isStraight(int from, int to) {
        double dx = runs.x(to) - runs.x(from);
        double dy = runs.y(to) - runs.y(from);
        double length = Math.hypot(dx, dy);
        for (int n = 0; n < part.span().count(); n++) {
            int entered = part.entered(n);
            if (!runs.isStraight(entered >> 1)
                    || off(entered, from, dx / length, dy / length) > STRAIGHT_MM
                    || off(entered ^ 1, from, dx / length, dy / length) > STRAIGHT_MM) {
                return false;
            }
        }
        return true;
    }

    private double off(int end, int from, double ux, double uy) {
        return Math.abs(ux * (runs.y(end) - runs.y(from)) - uy * (runs.x(end) - runs.x(from)));
    }

    /** A curve that leaves one end and meets the other in their directions; its controls lie a third of the way on, as an arc's do. */
    private void over(int from, int to, VectorPath.Builder<PagePoint> path) {
        double cross = runs.outX(from) * -runs.outY(to) + runs.outY(from) * runs.outX(to);
        if (Math.abs(cross) <= TURN) {
            path.lineTo(runs.x(to), runs.y(to));
            return;
        }
        double third = Math.hypot(runs.x(to) - runs.x(from), runs.y(to) - runs.y(from)) / 3;
        path.curveTo(
                runs.x(from) + third * runs.outX(from),
                runs.y(from) + third * runs.outY(from),
                runs.x(to) + third * runs.outX(to),
                runs.y(to) + third * runs.outY(to),
                runs.x(to),
                runs.y(to));
    }

    /** The pieces of a dash in the direction in which it is entered. */
    private List<PathPiece> along(int entered) {
        int dash = entered >> 1;
        List<PathPiece> pieces = new ArrayList<>();
        strokes.get(runs.stroke(dash)).path().pieces(new PieceVisitor() {
            private int run = -1;

            @Override
            public void begin(double x, double y) {
                run++;
            }

            @Override
            public void piece(PathPiece piece) {
                if (run == runs.run(dash)) {
                    pieces.add((entered & 1) == 0 ? piece : reversed(piece));
                }
            }
        });
        if ((entered & 1) == 1) {
            Collections.reverse(pieces);
        }
        return pieces;
    }

    private static PathPiece reversed(PathPiece p) {
        return p.straight()
                ? PathPiece.line(p.x3(), p.y3(), p.x0(), p.y0())
                : PathPiece.curve(p.x3(), p.y3(), p.x2(), p.y2(), p.x1(), p.y1(), p.x0(), p.y0());
    }
}
