package org.adumbrate.linework.pens;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.VectorPath;

/** Measures which way pieces of paths run. Curves run neither way. */
final class Directions {
    /** The tangent of 2 degrees: exporters and hands are that exact. */
    private static final double SLACK = 0.035;

    private final List<Upright> uprights = new ArrayList<>();
    private double lengthMm;
    private double uprightMm;
    private double levelMm;

    void add(VectorPath<PagePoint> path) {
        boolean single = path.segments() == 1;
        path.pieces(piece -> add(piece, single));
        lengthMm += path.length();
    }

    double lengthMm() {
        return lengthMm;
    }

    double uprightMm() {
        return uprightMm;
    }

    double levelMm() {
        return levelMm;
    }

    List<Upright> uprights() {
        return List.copyOf(uprights);
    }

    /** @param single whether it is all there is of its path */
    private void add(PathPiece piece, boolean single) {
        if (!piece.straight()) {
            return;
        }
        double across = Math.abs(piece.x3() - piece.x0());
        double down = Math.abs(piece.y3() - piece.y0());
        if (across <= SLACK * down && down > 0) {
            uprightMm += down;
            if (single) {
                uprights.add(new Upright((piece.x0() + piece.x3()) / 2, Math.max(piece.y0(), piece.y3()), down));
            }
        }
        levelMm += down <= SLACK * across ? across : 0;
    }
}
