package org.adumbrate.start;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * Where lines that run away from the viewer meet, near the horizon. In a one-point perspective that is the principal point; it
 * need not be the middle of the sheet.
 */
final class CentralPoint implements PieceVisitor {
    /** Shorter lines do not tell where they point, in mm. */
    private static final double LEAST_MM = 4;

    /** The tangent of 3 degrees: what is nearer to level or upright does not run away. */
    private static final double SLACK = 0.05;

    /** Lines cross the horizon within so many mm of each other, which is not known better. */
    private static final double WITHIN_MM = 2;

    /** Once the point is known to a millimetre, a line that misses it by more does not run toward it. */
    private static final double MISSED_MM = 0.3;

    /** Another meeting point is one farther off than this. */
    private static final double APART_MM = 12;

    /** The least share of all oblique line that meets there, and the most of it that may meet elsewhere. */
    private static final double ENOUGH = 0.2;

    private static final double RIVAL = 0.5;
    private static final int ROUNDS = 8;

    /** A line by a point of it and its unit normal. */
    private record Line(double x, double y, double nx, double ny, double lengthMm) {
        double crossing(double atY) {
            return x - (atY - y) * ny / nx;
        }

        double missed(SheetPoint point) {
            return Math.abs((point.x() - x) * nx + (point.y() - y) * ny);
        }
    }

    private final double horizonMm;
    private final List<Line> lines = new ArrayList<>();

    private CentralPoint(double horizonMm) {
        this.horizonMm = horizonMm;
    }

    /**
     * The point.
     *
     * @param horizonMm where the horizon is to a millimetre or two, in mm
     * @return nothing if the lines meet at no one point, as in a two-point perspective
     */
    static Optional<SheetPoint> of(List<VectorPath<SheetPoint>> drawn, double horizonMm) {
        CentralPoint point = new CentralPoint(horizonMm);
        drawn.forEach(line -> line.pieces(point));
        return point.best().map(point::refined);
    }

    private Optional<SheetPoint> best() {
        lines.sort(Comparator.comparingDouble(line -> line.crossing(horizonMm)));
        double all = lines.stream().mapToDouble(Line::lengthMm).sum();
        double[] sums = new double[lines.size() + 1];
        for (int k = 0; k < lines.size(); k++) {
            sums[k + 1] = sums[k] + lines.get(k).lengthMm();
        }
        double[] weights = new double[lines.size()];
        int best = 0;
        for (int k = 0, from = 0, to = 0; k < weights.length; k++) {
            from = first(from, crossing(k) - WITHIN_MM);
            to = first(to, crossing(k) + WITHIN_MM);
            weights[k] = sums[to] - sums[from];
            best = weights[k] > weights[best] ? k : best;
        }
        if (weights.length == 0 || weights[best] < ENOUGH * all) {
            return Optional.empty();
        }
        for (int k = 0; k < weights.length; k++) {
            if (Math.abs(crossing(k) - crossing(best)) > APART_MM && weights[k] > RIVAL * weights[best]) {
                return Optional.empty();
            }
        }
        return Optional.of(new SheetPoint(crossing(best), horizonMm));
    }

    private double crossing(int k) {
        return lines.get(k).crossing(horizonMm);
    }

    private int first(int from, double atX) {
        int k = from;
        while (k < lines.size() && crossing(k) < atX) {
            k++;
        }
        return k;
    }

    /** The point that the lines through its neighbourhood miss least, by least squares of the distances. */
    private SheetPoint refined(SheetPoint start) {
        SheetPoint at = start;
        for (int round = 0; round < ROUNDS; round++) {
            double reach = Math.max(MISSED_MM, WITHIN_MM / (round + 1));
            SheetPoint from = at;
            at = nearest(
                    lines.stream().filter(line -> line.missed(from) < reach).toList(), at);
        }
        return at;
    }

    private static SheetPoint nearest(List<Line> through, SheetPoint otherwise) {
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double xc = 0;
        double yc = 0;
        for (Line line : through) {
            double c = line.nx() * line.x() + line.ny() * line.y();
            xx += line.lengthMm() * line.nx() * line.nx();
            xy += line.lengthMm() * line.nx() * line.ny();
            yy += line.lengthMm() * line.ny() * line.ny();
            xc += line.lengthMm() * line.nx() * c;
            yc += line.lengthMm() * line.ny() * c;
        }
        double determinant = xx * yy - xy * xy;
        return determinant > 1e-6 * xx * yy
                ? new SheetPoint((yy * xc - xy * yc) / determinant, (xx * yc - xy * xc) / determinant)
                : otherwise;
    }

    @Override
    public void piece(PathPiece piece) {
        double across = piece.x3() - piece.x0();
        double down = piece.y3() - piece.y0();
        double length = Math.hypot(across, down);
        boolean isOblique = Math.abs(down) > SLACK * length && Math.abs(across) > SLACK * length;
        if (piece.straight() && length >= LEAST_MM && isOblique) {
            lines.add(new Line(piece.x0(), piece.y0(), down / length, -across / length, length));
        }
    }

    @Override
    public void closing(PathPiece piece) {
        // outlines of areas do not run away as edges do
    }
}
