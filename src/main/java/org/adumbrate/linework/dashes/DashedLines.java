package org.adumbrate.linework.dashes;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Stroke;

/**
 * Strokes with the dashes among them put together to dashed lines.
 *
 * @param strokes the strokes; a dashed line stands where its first dash was, what is no dash is the same as before
 * @param dashes how many dashes were put together
 * @param lines how many dashed lines they make
 */
public record DashedLines(List<Stroke> strokes, int dashes, int lines) {
    private static final int MOST_COPIES = 4;

    /** Copies the list. */
    public DashedLines {
        strokes = List.copyOf(strokes);
    }

    /**
     * Puts dashes together. A dashed line is a row of at least five open runs of one colour, width and layer, straight or along a curve,
     * whose lengths and gaps come again with a period of up to three dashes; those at its ends may be cut short. At most half of the
     * dashes' ends may lie on lines that run across. A shorter row, of two dashes or more, is one if enough others of the same look
     * keep the same rhythm.
     */
    public static DashedLines of(List<Stroke> strokes) {
        DashRuns runs = new DashRuns(strokes);
        if (runs.size() < Rhythm.sure(1)) {
            return new DashedLines(strokes, 0, 0);
        }
        boolean[] used = new boolean[runs.size()];
        Rows rhythms = new Rows(runs);
        List<Rows.Part> parts = new ArrayList<>();
        List<Rows.Part> sure = TouchedEnds.free(runs, rhythms.sure(DashRows.sure(runs, used)), strokes);
        // of lines that are drawn twice, one is linked at a time
        for (int copy = 0; copy < MOST_COPIES && !sure.isEmpty(); copy++) {
            parts.addAll(sure);
            use(sure, used);
            sure = TouchedEnds.free(runs, rhythms.sure(DashRows.sure(runs, used)), strokes);
        }
        if (parts.isEmpty()) {
            return new DashedLines(strokes, 0, 0);
        }
        KnownRhythms known = rhythms.known(parts);
        List<Rows.Part> more = parts;
        for (int copy = 0; copy < MOST_COPIES && !more.isEmpty(); copy++) {
            more = TouchedEnds.free(runs, rhythms.alike(DashRows.all(runs, used, known::hasGap), known), strokes);
            use(more, used);
            parts.addAll(more);
        }
        return written(strokes, runs, parts, used);
    }

    private static void use(List<Rows.Part> parts, boolean[] used) {
        for (Rows.Part part : parts) {
            for (int n = 0; n < part.span().count(); n++) {
                used[part.entered(n) >> 1] = true;
            }
        }
    }

    private static DashedLines written(List<Stroke> strokes, DashRuns runs, List<Rows.Part> parts, boolean[] used) {
        Map<Integer, BitSet> gone = new TreeMap<>();
        int dashes = 0;
        for (int k = 0; k < used.length; k++) {
            if (used[k]) {
                dashes++;
                gone.computeIfAbsent(runs.stroke(k), s -> new BitSet()).set(runs.run(k));
            }
        }
        Map<Integer, List<Stroke>> lines = new TreeMap<>();
        for (Rows.Part part : parts) {
            int first = Integer.MAX_VALUE;
            for (int n = 0; n < part.span().count(); n++) {
                first = Math.min(first, runs.stroke(part.entered(n) >> 1));
            }
            Stroke like = strokes.get(first);
            lines.computeIfAbsent(first, s -> new ArrayList<>())
                    .add(like.along(new DashedPath(runs, strokes, part).path()).dashed(dash(part.span())));
        }
        List<Stroke> all = new ArrayList<>(strokes.size());
        for (int k = 0; k < strokes.size(); k++) {
            all.addAll(lines.getOrDefault(k, List.of()));
            Stroke stroke = strokes.get(k);
            if (!gone.containsKey(k)) {
                all.add(stroke);
            } else if (gone.get(k).cardinality() < stroke.path().runs()) {
                VectorPath<PagePoint> rest = without(stroke.path(), gone.get(k));
                if (!rest.isEmpty()) {
                    all.add(stroke.along(rest));
                }
            }
        }
        return new DashedLines(all, dashes, parts.size());
    }

    private static Dash dash(Rhythm.Span span) {
        List<Double> lengths = new ArrayList<>();
        for (int k = 0; k < span.rhythm().period(); k++) {
            lengths.add(span.rhythm().dash(k));
            lengths.add(span.rhythm().gap(k));
        }
        return new Dash(lengths, span.phaseMm());
    }

    private static VectorPath<PagePoint> without(VectorPath<PagePoint> path, BitSet gone) {
        VectorPath.Builder<PagePoint> rest = VectorPath.in(Space.PAGE);
        path.pieces(new PieceVisitor() {
            private int run = -1;

            @Override
            public void begin(double x, double y) {
                run++;
                if (!gone.get(run)) {
                    rest.moveTo(x, y);
                }
            }

            @Override
            public void piece(PathPiece piece) {
                if (!gone.get(run)) {
                    piece.drawOn(rest);
                }
            }

            @Override
            public void closing(PathPiece piece) {
                if (!gone.get(run)) {
                    rest.close();
                }
            }
        });
        return rest.build();
    }
}
