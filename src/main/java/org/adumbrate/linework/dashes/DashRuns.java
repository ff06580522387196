package org.adumbrate.linework.dashes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.Stroke;

/**
 * The runs of a sheet's strokes that may be dashes: open, unbroken and short. Run k has two ends, 2k where it begins and 2k + 1 where it
 * ends.
 */
final class DashRuns {
    /** A long dash is 24 line widths long (ISO 128-2, table 2), 24 mm with the widest pens that are used. */
    static final double LONGEST_MM = 25;

    /** Curves are measured by chords, none farther from it than this, in mm. */
    private static final double FLATNESS_MM = 0.002;

    /** Widths are the same to within this, in mm. */
    private static final double SAME_WIDTH_MM = 0.02;

    /** What all dashes of a line have in common. */
    private record Look(Srgb color, long width, Optional<String> layer) {}

    /**
     * A run.
     *
     * @param stroke the number of its stroke
     * @param run which of the stroke's runs it is
     * @param look a number for what it looks like
     * @param lengthMm how long it is
     * @param straight whether it is one straight line
     * @param x0 where it begins
     * @param x1 where it ends
     * @param outX0 the direction in which a line goes on before its beginning, with outY0 a unit vector
     * @param outX1 the direction in which a line goes on past its end
     */
    record Piece(
            int stroke,
            int run,
            int look,
            double lengthMm,
            boolean straight,
            double x0,
            double y0,
            double x1,
            double y1,
            double outX0,
            double outY0,
            double outX1,
            double outY1) {}

    private final List<Piece> pieces = new ArrayList<>();
    private final Map<Look, Integer> looks = new HashMap<>();

    DashRuns(List<Stroke> strokes) {
        for (int k = 0; k < strokes.size(); k++) {
            Stroke stroke = strokes.get(k);
            if (stroke.dash().isNone()) {
                Look look = new Look(stroke.color(), Math.round(stroke.widthMm() / SAME_WIDTH_MM), stroke.layer());
                stroke.path().pieces(new Reader(k, looks.computeIfAbsent(look, l -> looks.size())));
            }
        }
    }

    int size() {
        return pieces.size();
    }

    Piece piece(int k) {
        return pieces.get(k);
    }

    double x(int end) {
        Piece piece = pieces.get(end >> 1);
        return (end & 1) == 0 ? piece.x0() : piece.x1();
    }

    double y(int end) {
        Piece piece = pieces.get(end >> 1);
        return (end & 1) == 0 ? piece.y0() : piece.y1();
    }

    /** The direction in which a line goes on past an end. */
    double outX(int end) {
        Piece piece = pieces.get(end >> 1);
        return (end & 1) == 0 ? piece.outX0() : piece.outX1();
    }

    /** As {@link #outX}. */
    double outY(int end) {
        Piece piece = pieces.get(end >> 1);
        return (end & 1) == 0 ? piece.outY0() : piece.outY1();
    }

    private final class Reader implements PieceVisitor {
        private final int stroke;
        private final int look;
        private int run = -1;
        private int count;
        private boolean curved;
        private double length;
        private double startX;
        private double startY;
        private double endX;
        private double endY;
        private double firstX;
        private double firstY;
        private double lastX;
        private double lastY;

        Reader(int stroke, int look) {
            this.stroke = stroke;
            this.look = look;
        }

        @Override
        public void begin(double x, double y) {
            run++;
            count = 0;
            curved = false;
            length = 0;
            startX = endX = x;
            startY = endY = y;
        }

        @Override
        public void piece(PathPiece piece) {
            curved |= !piece.straight();
            if (length <= LONGEST_MM) {
                piece.chords(FLATNESS_MM, this::chord);
            }
            endX = piece.x3();
            endY = piece.y3();
        }

        private void chord(double x0, double y0, double x1, double y1) {
            double chord = Math.hypot(x1 - x0, y1 - y0);
            if (chord > 0) {
                lastX = (x1 - x0) / chord;
                lastY = (y1 - y0) / chord;
                if (count++ == 0) {
                    firstX = -lastX;
                    firstY = -lastY;
                }
                length += chord;
            }
        }

        @Override
        public void end(boolean closed) {
            boolean ring = closed || (startX == endX && startY == endY);
            if (!ring && length <= LONGEST_MM && count > 0) {
                pieces.add(new Piece(
                        stroke,
                        run,
                        look,
                        length,
                        !curved && count == 1,
                        startX,
                        startY,
                        endX,
                        endY,
                        firstX,
                        firstY,
                        lastX,
                        lastY));
            }
        }
    }
}
