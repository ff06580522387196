package org.adumbrate.registration;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;

/**
 * Places a pass on a sheet most of whose lines it does not show: a dense pattern that was drawn over everything, or lines that are hidden in
 * the model and were exported nevertheless. Each piece of line is judged by itself at a placement, those that the pass shows are kept,
 * and the placement is fitted to them.
 *
 * <p>Pieces picked for their agreement agree, so that says nothing of the placement. What tells is how many there are to pick, against what
 * chance would put there, and how much of what the pass shows lies along them, everywhere: another camera may bring one plane of a
 * model onto its lines, never all of them.
 *
 * @param fitted the placement, fitted to the pieces that the pass shows
 * @param shown the pattern of those
 * @param beyondChance how many times as many pieces agree as do by chance
 * @param explained how many edges of the pass lie along them
 */
record Sifting(Fitted fitted, LinePattern shown, double beyondChance, PassEdges.Explained explained) {
    /** Of the edge models, those that tell apart passes of light and passes of drawn edges. */
    private static final List<EdgeModel> MODELS = List.of(Refinement.MODELS.get(0), Refinement.MODELS.get(2));

    /** The long side of the sheet, in distances between probes... */
    private static final double APART = 400;

    /** ...of which there are no more than this. */
    private static final int MOST_PROBES = 200_000;

    /** To rank placements, and to learn what chance brings, fewer do. */
    private static final int FEWER_PROBES = 45_000;

    /** If so many times as many pieces agree as by chance, there is no need to look further. */
    private static final double PLAIN = 2.5;

    /** Pieces that must be seen for a placement to be looked into. */
    private static final int LEAST_PIECES = 24;

    /** Placements beside the one judged that show what chance brings, in directions spread by the golden angle. */
    private static final int CHANCES = 8;

    /** The same to rank placements. */
    private static final int FEWER_CHANCES = 3;

    /** Lines are picked and fitted at most so often... */
    private static final int ROUNDS = 4;

    /** ...while that finds so many times as many. */
    private static final double MORE = 1.1;

    /** Placements that directions propose, to be ranked. */
    private static final int CANDIDATES = 16;

    /** At this a placement is as likely right as wrong: passes of known truth reach 4 and more, wrong ones at most 2.2... */
    private static final double EVEN = 3.2;

    /** ...and this step makes it e times as likely. */
    private static final double STEP = 0.25;

    /** The same for the share of edges along the pieces: 0.32 and more, wrong ones at most 0.08. */
    private static final double EVEN_SHARE = 0.25;

    private static final double SHARE_STEP = 0.02;

    /** The same for the share of the parts of the pass in which a tenth is along them: 0.9 and more, wrong ones at most 0.31. */
    private static final double EVEN_REGIONS = 0.7;

    private static final double REGIONS_STEP = 0.03;
    private static final double IN_A_REGION = 0.1;

    /** Looks for the placement of a pass among its frames and wherever its directions agree; empty if none shows enough of the lines. */
    static Optional<Sifting> of(
            LinePattern lines, SheetSize sheet, Search search, List<Affine<SheetPoint, RasterPoint>> frames) {
        return new Sieve(lines, sheet, search).sift(frames);
    }

    /** How probable it is that the placement is right, 0 to 1. */
    double confidence() {
        return Math.min(
                Attempt.logistic((beyondChance - EVEN) / STEP),
                Math.min(
                        Attempt.logistic((explained.share() - EVEN_SHARE) / SHARE_STEP),
                        Attempt.logistic((explained.regions(IN_A_REGION) - EVEN_REGIONS) / REGIONS_STEP)));
    }

    /**
     * What a placement shows of the lines.
     *
     * @param map from the sheet to pixels of the pass
     * @param level where it was looked at
     * @param model what the edges are made of
     * @param pieces pieces that agree
     * @param byChance pieces that agree at placements beside it, in the mean
     */
    private record Look(
            Affine<SheetPoint, RasterPoint> map, PassLevel level, EdgeModel model, int pieces, double byChance) {
        /** In standard deviations of what chance brings. */
        double beyondChance() {
            return (pieces - byChance) / Math.sqrt(byChance + 1);
        }
    }

    /** The lines of a sheet with probes to judge each by, and the search whose pass they are judged in. */
    private static final class Sieve {
        private final LinePattern lines;
        private final Search search;
        private final Probes probes;
        private final Probes fewer;

        Sieve(LinePattern lines, SheetSize sheet, Search search) {
            this.lines = lines;
            this.search = search;
            double apart = Math.max(sheet.widthMm(), sheet.heightMm()) / APART;
            probes = Probes.ofEach(lines.pieces(), apart, MOST_PROBES);
            fewer = Probes.ofEach(lines.pieces(), apart, FEWER_PROBES);
        }

        Optional<Sifting> sift(List<Affine<SheetPoint, RasterPoint>> frames) {
            // a frame is exact, so that any resolution may show best that it is right
            Look best = best(frames, search.levels());
            if (best.pieces() < PLAIN * best.byChance()) {
                List<Affine<SheetPoint, RasterPoint>> others = search.candidates(fewer, frames, CANDIDATES).stream()
                        .map(Candidate::map)
                        .toList();
                Look other = best(others, search.levels().subList(0, 1));
                best = other.beyondChance() > best.beyondChance() ? other : best;
            }
            return best.pieces() < LEAST_PIECES ? Optional.empty() : refined(best);
        }

        /** Of some placements the one at which most pieces are seen, against chance. */
        private Look best(List<Affine<SheetPoint, RasterPoint>> maps, List<PassLevel> levels) {
            return maps.stream()
                    .distinct()
                    .flatMap(map -> levels.stream()
                            .flatMap(level -> MODELS.stream().map(model -> look(level, model, map, FEWER_CHANCES))))
                    .max(Comparator.comparingDouble(Look::beyondChance))
                    .orElseThrow();
        }

        /** Looks at fewer pieces, and at some places beside the placement for what chance brings. */
        private Look look(PassLevel level, EdgeModel model, Affine<SheetPoint, RasterPoint> map, int chances) {
            int byChance = 0;
            for (int n = 0; n < chances; n++) {
                double angle = 0.5 + 2.4 * n;
                double far = (6 + 4 * n) * level.image().reduction;
                Affine<SheetPoint, RasterPoint> beside = map.then(Affine.scalingThenShift(
                        Space.RASTER, Space.RASTER, 1, 1, far * Math.cos(angle), far * Math.sin(angle)));
                byChance += seen(fewer, level, model, beside).cardinality();
            }
            int pieces = seen(fewer, level, model, map).cardinality();
            return new Look(map, level, model, pieces, (double) byChance / chances);
        }

        private static BitSet seen(
                Probes probes, PassLevel level, EdgeModel model, Affine<SheetPoint, RasterPoint> map) {
            return EdgeHits.find(probes, level, model, Lay.reduced(map, level.image().reduction), 1)
                    .piecesSeen();
        }

        /** Fits to what is seen, and again to what is seen there, while that becomes more. */
        private Optional<Sifting> refined(Look look) {
            LinePattern shown = shown(look.level(), look.model(), look.map());
            List<PassLevel> levels = search.levels();
            Fitted fitted =
                    new Refinement(shown, levels.subList(levels.indexOf(look.level()), levels.size())).of(look.map());
            int before = 0;
            for (int round = 0; round < ROUNDS && shown.count() >= MORE * before; round++) {
                before = shown.count();
                shown = shown(fitted.level(), fitted.model(), fitted.map());
                if (shown.count() < LEAST_PIECES) {
                    return Optional.empty();
                }
                fitted = new Refinement(shown, levels).of(fitted.map());
            }
            return Optional.of(judged(fitted, shown));
        }

        private Sifting judged(Fitted fitted, LinePattern shown) {
            Look look = look(fitted.level(), fitted.model(), fitted.map(), CHANCES);
            return new Sifting(
                    fitted,
                    shown,
                    look.pieces() / Math.max(1, look.byChance()),
                    new PassEdges(search.levels().get(0)).explained(shown, fitted.map()));
        }

        private LinePattern shown(PassLevel level, EdgeModel model, Affine<SheetPoint, RasterPoint> map) {
            return lines.only(seen(probes, level, model, map));
        }
    }
}
