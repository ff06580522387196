package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * Finds where straight lines of a drawing meet. Edges of a building that run in one direction vanish in one point, and if they
 * are level, the point lies on the horizon. The crossings of long lines are tried (Fischler and Bolles, 1981), the best is
 * fitted to the lines that meet there, these are set aside, and the rest is searched again.
 */
public final class VanishingSearch {
    /** Shorter lines do not tell where they point, in mm. */
    private static final double LEAST_MM = 4;

    /** The sine of 2 degrees: what is nearer to level or upright may run along the picture. */
    private static final double SLACK = 0.035;

    /** Ends of lines are drawn this exactly, in mm, as a standard deviation. */
    private static final double SIGMA_MM = 0.04;

    /** A line that misses a point by so many standard deviations does not run there. */
    private static final double GATE = 3;

    private static final int MOST_LINES = 300;
    private static final int TRIED_LINES = 110;
    private static final int MOST_POINTS = 6;
    private static final int ROUNDS = 8;
    private static final double FARTHEST_MM = 1e5;

    /** A point could have been anywhere: its place comes from a range that is e^18 times as wide as its lines tell it. */
    private static final double POINT_COST = 18;

    private VanishingSearch() {}

    /**
     * The points where lines meet.
     *
     * @param drawn the lines of a drawing, without height lines
     * @return the best first; empty if lines meet nowhere beyond chance
     */
    public static List<VanishingPoint> of(List<VectorPath<SheetPoint>> drawn) {
        List<RecedingLine> left = longest(drawn);
        List<VanishingPoint> points = new ArrayList<>();
        while (points.size() < MOST_POINTS) {
            Optional<VanishingPoint> next = best(left);
            if (next.isEmpty()) {
                break;
            }
            points.add(next.get());
            left.removeIf(line -> worth(line, next.get().at()) > 0);
        }
        return points;
    }

    /** The longest lines, of several in line the longest alone. */
    private static List<RecedingLine> longest(List<VectorPath<SheetPoint>> drawn) {
        Oblique oblique = new Oblique();
        drawn.forEach(path -> path.pieces(oblique));
        oblique.lines.sort(Comparator.comparingDouble(RecedingLine::lengthMm).reversed());
        List<RecedingLine> kept = new ArrayList<>();
        for (RecedingLine line : oblique.lines) {
            if (kept.size() == MOST_LINES) {
                break;
            }
            if (kept.stream().noneMatch(longer -> longer.isInLineWith(line, GATE * SIGMA_MM))) {
                kept.add(line);
            }
        }
        return kept;
    }

    private static Optional<VanishingPoint> best(List<RecedingLine> lines) {
        int tried = Math.min(TRIED_LINES, lines.size());
        double most = 0;
        SheetPoint best = null;
        for (int i = 0; i < tried; i++) {
            for (int j = i + 1; j < tried; j++) {
                SheetPoint at = lines.get(i).crossing(lines.get(j));
                if (Math.abs(at.x()) + Math.abs(at.y()) < FARTHEST_MM) {
                    double worth = worth(lines, at);
                    if (worth > most) {
                        most = worth;
                        best = at;
                    }
                }
            }
        }
        return Optional.ofNullable(best)
                .map(at -> fitted(lines, at))
                .filter(point -> isBeyondChance(point, lines.size()));
    }

    /** Among many lines some meet by chance. */
    private static boolean isBeyondChance(VanishingPoint point, int count) {
        return point.worth() > POINT_COST + Evidence.choiceCost(point.lines(), count - point.lines(), true);
    }

    private static double worth(List<RecedingLine> lines, SheetPoint at) {
        double worth = 0;
        for (RecedingLine line : lines) {
            worth += worth(line, at);
        }
        return worth;
    }

    /** The logarithm of how much better a line is explained by running to a point than by any other direction. */
    private static double worth(RecedingLine line, SheetPoint at) {
        double off = line.missed(at) / SIGMA_MM;
        return Math.abs(off) > GATE
                ? 0
                : Math.max(0, Math.log(line.lengthMm() / (SIGMA_MM * Math.sqrt(2 * Math.PI))) - off * off / 2);
    }

    /** Least squares of how far ends of lines are off, by the lines that run there. */
    private static VanishingPoint fitted(List<RecedingLine> lines, SheetPoint start) {
        SheetPoint at = start;
        double yError = Double.POSITIVE_INFINITY;
        int count = 0;
        for (int round = 0; round < ROUNDS; round++) {
            double xx = 0;
            double xy = 0;
            double yy = 0;
            double x = 0;
            double y = 0;
            count = 0;
            for (RecedingLine line : lines) {
                if (worth(line, at) > 0) {
                    double weight = Math.pow(line.leverage(at), 2);
                    double off = line.offset(at);
                    xx += weight * line.nx() * line.nx();
                    xy += weight * line.nx() * line.ny();
                    yy += weight * line.ny() * line.ny();
                    x += weight * line.nx() * off;
                    y += weight * line.ny() * off;
                    count++;
                }
            }
            double det = xx * yy - xy * xy;
            if (!(det > 1e-12 * xx * yy)) {
                break;
            }
            at = new SheetPoint(at.x() - (yy * x - xy * y) / det, at.y() - (xx * y - xy * x) / det);
            yError = SIGMA_MM * Math.sqrt(xx / det);
        }
        return new VanishingPoint(at, yError, worth(lines, at), count);
    }

    /** Collects straight lines that are neither level nor upright. */
    private static final class Oblique implements PieceVisitor {
        private final List<RecedingLine> lines = new ArrayList<>();

        @Override
        public void piece(PathPiece piece) {
            double across = Math.abs(piece.x3() - piece.x0());
            double down = Math.abs(piece.y3() - piece.y0());
            double length = Math.hypot(across, down);
            if (piece.straight() && length >= LEAST_MM && Math.min(across, down) > SLACK * length) {
                lines.add(RecedingLine.of(piece));
            }
        }

        @Override
        public void closing(PathPiece piece) {
            // outlines of areas do not run away as edges do
        }
    }
}
