package org.adumbrate.linework.cover;

import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.linework.clip.PathCutter;

/** What is seen of one stroke after another behind covers. */
final class LinesBehind implements PathCutter.Sight {
    /** How far the flanks lie from the middle of a line, in mm: a fifth of the thinnest pen's half width (ISO 128-2). */
    static final double RIM_MM = 0.01;

    /** Where areas meet, their corners are the same but for rounding. */
    static final double SEAM_MM = 1e-4;

    /** What is left between hidden parts, or at an end, and is shorter than this is nothing that could be seen, in mm. */
    static final double SHORTEST_MM = 0.05;

    /**
     * A line that comes up to a rim at a slant has one flank outside before it gets there itself. How far before, at most; what is
     * longer runs along the rim.
     */
    private static final double SLANT_MM = 1;

    /** The flanks when looked at closely, to tell where exactly a line comes out. */
    private static final double CLOSE_MM = 1e-4;

    /** How far a curve may lie from the chords by which it is looked at, in mm. */
    private static final double FLATNESS_MM = 0.002;

    /** Places along a piece that are as near as this are the same. */
    private static final double PLACE = 1e-12;

    private static final int MOST_CHORDS = 2000;
    private static final double[] ALL = {0, 1};

    private final CoverIndex covers;
    private final EdgeCrossings crossings = new EdgeCrossings();
    private final Spans right = new Spans(SEAM_MM);
    private final Spans left = new Spans(SEAM_MM);
    private final Spans behind = new Spans(SEAM_MM);
    private int stroke;

    LinesBehind(CoverIndex covers) {
        this.covers = covers;
    }

    /** Goes on to the stroke of a number. */
    void lookAt(int number) {
        stroke = number;
    }

    @Override
    public double[] visible(PathPiece piece) {
        CoveringArea[] over = covers.over(piece, stroke);
        crossings.look(over.length);
        if (over.length == 0) {
            return ALL;
        }
        Spans hidden = hidden(piece, over, RIM_MM);
        if (hidden.size() == 0 || hidden.hold(0, 1)) {
            return between(hidden);
        }
        return between(outToTheRim(hidden, hidden(piece, over, CLOSE_MM), piece.reach()));
    }

    /** The same stretches, each as far as it goes when looked at closely, unless that is along the rim. */
    private static Spans outToTheRim(Spans hidden, Spans closely, double lengthMm) {
        Spans exact = new Spans(PLACE);
        for (int k = 0, n = 0; k < hidden.size(); k++) {
            double from = hidden.from(k);
            double to = hidden.to(k);
            while (n < closely.size() && closely.to(n) < to - PLACE) {
                n++;
            }
            boolean found = n < closely.size() && closely.from(n) <= from + PLACE;
            double start = found ? closely.from(n) : from;
            double end = found ? closely.to(n) : to;
            exact.add(
                    (from - start) * lengthMm <= SLANT_MM ? Math.min(from, start) : from,
                    (end - to) * lengthMm <= SLANT_MM ? Math.max(to, end) : to);
        }
        return exact;
    }

    @Override
    public boolean keeps(List<PathPiece> stretch) {
        double length = stretch.stream().mapToDouble(PathPiece::reach).sum();
        if (length >= SLANT_MM) {
            return true;
        }
        double seen = 0;
        for (PathPiece piece : stretch) {
            Spans hidden = hidden(piece, covers.over(piece, stroke), CLOSE_MM);
            double share = 1;
            for (int k = 0; k < hidden.size(); k++) {
                share -= hidden.to(k) - hidden.from(k);
            }
            seen += share * piece.reach();
        }
        return seen >= SHORTEST_MM;
    }

    /** Where a piece is hidden, from 0 to 1. */
    private Spans hidden(PathPiece piece, CoveringArea[] over, double rim) {
        Spans hidden = new Spans(PLACE);
        int chords = chords(piece);
        double fromX = piece.x0();
        double fromY = piece.y0();
        for (int k = 0; k < chords; k++) {
            double t = (k + 1.0) / chords;
            double toX = piece.xAt(t);
            double toY = piece.yAt(t);
            double length = Math.hypot(toX - fromX, toY - fromY);
            lookBehind(fromX, fromY, toX, toY, over, rim);
            if (length == 0 && behind.size() > 0) {
                hidden.add((double) k / chords, t);
            } else {
                for (int n = 0; n < behind.size(); n++) {
                    hidden.add((k + behind.from(n) / length) / chords, (k + behind.to(n) / length) / chords);
                }
            }
            fromX = toX;
            fromY = toY;
        }
        return hidden;
    }

    /** Finds the stretches of a straight line that are hidden, those of which both flanks are; a point is looked at as a short line. */
    private void lookBehind(double x0, double y0, double x1, double y1, CoveringArea[] over, double rim) {
        double more = x0 == x1 && y0 == y1 ? rim : 0;
        Flank toRight = Flank.beside(x0 - more, y0, x1 + more, y1, rim);
        Flank toLeft = Flank.beside(x0 - more, y0, x1 + more, y1, -rim);
        right.clear();
        left.clear();
        behind.clear();
        for (CoveringArea area : over) {
            boolean rightHidden = right.hold(0, toRight.length());
            boolean leftHidden = left.hold(0, toLeft.length());
            if (rightHidden && leftHidden) {
                break;
            }
            if (!rightHidden) {
                area.cover(toRight, crossings, right);
            }
            if (!leftHidden) {
                area.cover(toLeft, crossings, left);
            }
        }
        behind.addCommon(right, left);
    }

    /** So many that none lies farther from its curve than the flatness (Wang, 1984; the same steps as those of outlines). */
    private static int chords(PathPiece p) {
        if (p.straight()) {
            return 1;
        }
        double bend = Math.max(
                Math.hypot(p.x0() - 2 * p.x1() + p.x2(), p.y0() - 2 * p.y1() + p.y2()),
                Math.hypot(p.x1() - 2 * p.x2() + p.x3(), p.y1() - 2 * p.y2() + p.y3()));
        return (int) Math.max(1, Math.min(MOST_CHORDS, Math.ceil(Math.sqrt(0.75 * bend / FLATNESS_MM))));
    }

    /** What lies between the hidden parts. */
    private static double[] between(Spans hidden) {
        double[] parts = new double[2 * hidden.size() + 2];
        int count = 0;
        double from = 0;
        for (int k = 0; k < hidden.size(); k++) {
            if (hidden.from(k) > from) {
                parts[count++] = from;
                parts[count++] = hidden.from(k);
            }
            from = Math.max(from, hidden.to(k));
        }
        if (from < 1) {
            parts[count++] = from;
            parts[count++] = 1;
        }
        return Arrays.copyOf(parts, count);
    }
}
