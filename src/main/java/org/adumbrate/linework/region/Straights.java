package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * Makes straight lines whole that are doubled or whose pieces overlap: the longest piece gives the line, and takes in all pieces
 * that lie on it and share a stretch with what it has so far. Pieces that merely follow each other, as chords of a curve do, are
 * left as they are.
 */
final class Straights {
    /** How far a piece may lie beside the line, and what it must share with it at least: break points of exports are off by up to 0.002 mm. */
    static final double TOLERANCE_MM = 0.006;
    /** Pieces are looked for in squares of this size along the line. */
    private static final double LOOK_MM = 4;

    private final List<Segment> pieces;
    private final HPRtree places = new HPRtree();
    private final BitSet taken = new BitSet();

    private Straights(List<Segment> pieces) {
        this.pieces = pieces;
        for (int k = 0; k < pieces.size(); k++) {
            Segment piece = pieces.get(k);
            places.insert(new Envelope(piece.x0(), piece.x1(), piece.y0(), piece.y1()), k);
        }
    }

    /** Whole lines for pieces of one kind. */
    static List<Segment> whole(List<Segment> pieces) {
        List<Segment> longestFirst = new ArrayList<>(pieces);
        longestFirst.sort(Comparator.comparingDouble(Segment::length).reversed());
        Straights straights = new Straights(longestFirst);
        List<Segment> whole = new ArrayList<>();
        for (int k = 0; k < longestFirst.size(); k++) {
            if (!straights.taken.get(k)) {
                straights.taken.set(k);
                whole.add(straights.grown(longestFirst.get(k)));
            }
        }
        return whole;
    }

    private Segment grown(Segment seed) {
        Growing line = new Growing(seed);
        double lookedFrom = 0;
        double lookedTo = 0;
        while (lookedFrom > line.from || lookedTo < line.to) {
            if (lookedTo < line.to) {
                double next = Math.min(line.to, lookedTo + LOOK_MM);
                look(line, lookedTo, next);
                lookedTo = next;
            } else {
                double next = Math.max(line.from, lookedFrom - LOOK_MM);
                look(line, next, lookedFrom);
                lookedFrom = next;
            }
        }
        return line.segment();
    }

    private void look(Growing line, double from, double to) {
        Envelope box = new Envelope(line.x(from), line.x(to), line.y(from), line.y(to));
        box.expandBy(TOLERANCE_MM);
        places.query(box, item -> {
            int k = (Integer) item;
            if (!taken.get(k) && line.takes(pieces.get(k))) {
                taken.set(k);
            }
        });
    }

    /** A line that grows at both ends; places along it are counted from the seed's first end. */
    private static final class Growing {
        private final Segment seed;
        private final double dx;
        private final double dy;
        private double from;
        private double to;

        Growing(Segment seed) {
            this.seed = seed;
            this.to = seed.length();
            this.dx = (seed.x1() - seed.x0()) / to;
            this.dy = (seed.y1() - seed.y0()) / to;
        }

        boolean takes(Segment piece) {
            if (!onLine(piece.x0(), piece.y0()) || !onLine(piece.x1(), piece.y1())) {
                return false;
            }
            double a = along(piece.x0(), piece.y0());
            double b = along(piece.x1(), piece.y1());
            double shared = Math.min(to, Math.max(a, b)) - Math.max(from, Math.min(a, b));
            if (shared < TOLERANCE_MM) {
                return false;
            }
            from = Math.min(from, Math.min(a, b));
            to = Math.max(to, Math.max(a, b));
            return true;
        }

        private boolean onLine(double x, double y) {
            return Math.abs((x - seed.x0()) * dy - (y - seed.y0()) * dx) <= TOLERANCE_MM;
        }

        private double along(double x, double y) {
            return (x - seed.x0()) * dx + (y - seed.y0()) * dy;
        }

        double x(double along) {
            return seed.x0() + along * dx;
        }

        double y(double along) {
            return seed.y0() + along * dy;
        }

        Segment segment() {
            return new Segment(x(from), y(from), x(to), y(to), seed.kind());
        }
    }
}
