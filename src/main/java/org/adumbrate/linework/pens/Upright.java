package org.adumbrate.linework.pens;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A straight stroke that stands upright: where its foot is, and how high it reaches, in mm of the page. */
record Upright(double x, double footY, double height) {
    /** Pieces of one upright stand above each other to this many mm. */
    private static final double ACROSS_MM = 0.3;

    /** Some uprights, those in one line joined where gaps between them are no wider than so many mm. */
    static List<Upright> joined(List<Upright> pieces, double gapMm) {
        List<Upright> fromTheLeft = new ArrayList<>(pieces);
        fromTheLeft.sort(Comparator.comparingDouble(Upright::x));
        List<Upright> joined = new ArrayList<>();
        for (int from = 0, to; from < fromTheLeft.size(); from = to) {
            to = from + 1;
            while (to < fromTheLeft.size()
                    && fromTheLeft.get(to).x() - fromTheLeft.get(to - 1).x() <= ACROSS_MM) {
                to++;
            }
            List<Upright> column = new ArrayList<>(fromTheLeft.subList(from, to));
            column.sort(Comparator.comparingDouble(Upright::headY));
            joinDown(column, gapMm, joined);
        }
        return joined;
    }

    private static void joinDown(List<Upright> column, double gapMm, List<Upright> into) {
        Upright last = column.get(0);
        for (Upright piece : column.subList(1, column.size())) {
            if (piece.headY() - last.footY <= gapMm) {
                double foot = Math.max(last.footY, piece.footY);
                last = new Upright(last.x, foot, foot - last.headY());
            } else {
                into.add(last);
                last = piece;
            }
        }
        into.add(last);
    }

    private double headY() {
        return footY - height;
    }
}
