package org.adumbrate.registration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;

/** Finds the placement of lines in a picture, from nothing to a fraction of a pixel. */
final class Search {
    /** Long side of the picture in which placements are sought, in pixels. */
    private static final double SMALL = 640;

    /** Width of the coarsest picture in which edges are measured, in pixels. */
    private static final int COARSEST = 700;

    private static final int CANDIDATES = 12;

    /** How many of the candidates are measured. */
    private static final int MEASURED = 5;

    /** If so many standard deviations more lines agree than by chance... */
    private static final double PLAIN_LINES = 8;

    /** ...and this share of the edges, the placement is plainly right. */
    private static final double PLAIN_SHARE = 0.65;

    /**
     * A placement must agree so many times as well as the frame to be taken instead of it: where lines stand on the sheet twice, moved, both
     * agree, and a pass fills its frame far more often than not.
     */
    private static final double CLEARLY = 1.25;

    private final LinePattern lines;
    private final SheetSize sheet;
    private final ToneImage tone;
    private final PixelRect inside;
    private final List<PassLevel> levels = new ArrayList<>();
    private final Refinement refinement;

    /** @param inside the part of the picture between its bars */
    Search(LinePattern lines, SheetSize sheet, ToneImage tone, PixelRect inside) {
        this.lines = lines;
        this.sheet = sheet;
        this.tone = tone;
        this.inside = inside;
        for (int times = 16; times >= 1; times /= 2) {
            if (times == 1 || tone.width / times >= COARSEST) {
                levels.add(PassLevel.of(tone, inside, times));
            }
        }
        refinement = new Refinement(lines, levels);
    }

    /** The pass at each resolution in which edges are measured, from the coarsest to the finest. */
    List<PassLevel> levels() {
        return levels;
    }

    /**
     * The best placement found, with a scale each way.
     *
     * @param frames placements to try besides those found by looking, to pixels of the pass
     */
    Fitted run(List<Affine<SheetPoint, RasterPoint>> frames) {
        Fitted best = refinement.first(frames.get(0));
        double toBeat = CLEARLY * best.linesBeyondChance();
        if (!plain(best)) {
            for (Candidate candidate : candidates(lines.probes(), frames, MEASURED)) {
                Fitted next = refinement.first(candidate.map());
                best = next.linesBeyondChance() > toBeat ? next : best;
                toBeat = Math.max(toBeat, next.linesBeyondChance());
                if (plain(next)) {
                    break;
                }
            }
        }
        return refinement.on(best);
    }

    /** True if there is no need to look further. */
    private static boolean plain(Fitted fitted) {
        return fitted.linesBeyondChance() > PLAIN_LINES && fitted.support() > PLAIN_SHARE * fitted.hits().count;
    }

    /**
     * Rough placements worth measuring; maps are to pixels of the pass.
     *
     * @param probes places along the lines, whose directions are compared with those of the pass
     * @param most so many besides the frames
     */
    List<Candidate> candidates(Probes probes, List<Affine<SheetPoint, RasterPoint>> frames, int most) {
        int times = (int) Math.max(1, Math.round(Math.max(tone.width, tone.height) / SMALL));
        int back = times * tone.reduction;
        OrientationField field = OrientationField.of(tone.reduced(times), inside.reduced(times));
        List<Candidate> rough = CoarseSearch.candidates(probes, sheet, field, Math.max(CANDIDATES, most));
        List<Candidate> framed =
                frames.stream().map(f -> new Candidate(Lay.reduced(f, back), 0)).toList();
        LocalSearch soft = new LocalSearch(probes, field.blurred(3));
        LocalSearch sharp = new LocalSearch(probes, field.blurred(1));
        UnaryOperator<Candidate> climb = c -> sharp.climb(soft.climb(c, 6, 1), 2, 0.25);
        List<Candidate> found = distinct(rough.parallelStream().map(climb).toList(), 2);
        List<Candidate> best = new ArrayList<>(found.subList(0, Math.min(most, found.size())));
        best.addAll(framed.parallelStream().map(climb).toList());
        // Most passes fill their frame exactly: those placements are measured as they are, too.
        List<Candidate> measured = new ArrayList<>(distinct(best, 2));
        measured.addAll(distinct(framed, 0.5));
        return measured.stream()
                .map(c -> new Candidate(Lay.reduced(c.map(), 1.0 / back), c.score()))
                .toList();
    }

    /** The candidates that are not within some pixels of a better one, the best first. */
    private List<Candidate> distinct(List<Candidate> candidates, double pixels) {
        List<SheetPoint> corners = List.of(new SheetPoint(0, 0), new SheetPoint(sheet.widthMm(), sheet.heightMm()));
        List<Candidate> sorted = candidates.stream()
                .sorted(Comparator.comparingDouble(Candidate::score).reversed())
                .toList();
        List<Candidate> kept = new ArrayList<>();
        for (Candidate next : sorted) {
            if (kept.stream().noneMatch(d -> Lay.apart(d.map(), next.map(), corners) < pixels)) {
                kept.add(next);
            }
        }
        return kept;
    }
}
