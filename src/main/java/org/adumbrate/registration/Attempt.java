package org.adumbrate.registration;

import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;

/**
 * The best placement that could be found for a picture, and whether it can be believed.
 *
 * @param fitted the fit to the edges
 * @param map from the sheet to pixels of the pass: the fit, or the exact frame it agrees with
 * @param sigma standard deviation of the map at the worst covered corner, in pixels of the pass; 0 for an exact frame
 * @param agreement how well the edges agree with the lines
 * @param sifting what it was placed by, if not by all the lines
 */
record Attempt(
        Fitted fitted,
        Affine<SheetPoint, RasterPoint> map,
        double sigma,
        Agreement agreement,
        Optional<Sifting> sifting) {
    /** The score of an agreement at which a pass is as likely right as wrong. */
    private static final double EVEN = 0.5;

    /** The same for a placement that agrees with an exact frame. */
    private static final double EVEN_FRAMED = 0.42;

    /** The step of score that makes it e times as likely. */
    private static final double STEP = 0.03;

    /** Standard deviations by which lines must agree more than by chance... */
    private static final double LEAST_LINES = 3;

    /** ...and the step of them that makes a pass e times as likely. */
    private static final double LINES_STEP = 0.5;

    /** What it is worth, in those, that the measured placement agrees with an exact frame: chance hardly ever does. */
    private static final double FRAMED = 1.5;

    /** Edges on their lines beyond chance, as a share of the places looked at, that a placement needs. */
    private static final double LEAST_SEEN = 0.07;

    /** The same for a placement that agrees with an exact frame. */
    private static final double LEAST_SEEN_FRAMED = 0.04;

    /** Edges that a placement needs. */
    private static final int LEAST_EDGES = 60;

    /** A placement that may be off by more than this standard deviation, in pixels, is not believed. */
    private static final double MOST_SIGMA = 0.35;

    /** The most that is believed of a placement that lacks something it needs. */
    private static final double DOUBTFUL = 0.3;

    /** Stretch is believed beyond this many standard deviations... */
    private static final double SIGMAS = 3;

    /** ...and beyond this, in pixels at the worst corner. */
    private static final double LEAST_STRETCH = 0.06;

    /**
     * Searches a picture for the lines, and if they are not found there, for some of them.
     *
     * @param size the size of the pass in its file
     * @param inside the part of the picture between its bars, in pixels of the tone image
     */
    static Attempt of(LinePattern lines, SheetSize sheet, ToneImage tone, PixelSize size, PixelRect inside) {
        List<Affine<SheetPoint, RasterPoint>> frames =
                ExactFrames.of(sheet, size, inside.enlarged(tone.reduction, size));
        Search search = new Search(lines, sheet, tone, inside);
        Attempt plain = fitted(lines, search.run(frames), search, frames, sheet, size, Optional.empty());
        return plain.accepted()
                ? plain
                : Sifting.of(lines, sheet, search, frames)
                        .map(s -> fitted(s.shown(), s.fitted(), search, frames, sheet, size, Optional.of(s)))
                        .filter(Attempt::accepted)
                        .orElse(plain);
    }

    /** An attempt by some lines, with as few freedoms as agree with their edges. */
    private static Attempt fitted(
            LinePattern lines,
            Fitted stretched,
            Search search,
            List<Affine<SheetPoint, RasterPoint>> frames,
            SheetSize sheet,
            PixelSize size,
            Optional<Sifting> sifting) {
        Fitted uniform = new Refinement(lines, search.levels()).with(PlacementFit.Freedom.UNIFORM, stretched);
        List<SheetPoint> corners = Lay.covered(sheet, size, stretched.map().inverse());
        double doubt = stretched.sigmaAt(corners);
        double apart = Lay.apart(uniform.map(), stretched.map(), corners);
        Fitted fitted = apart < Math.max(LEAST_STRETCH, SIGMAS * doubt) ? uniform : stretched;
        double sigma = fitted.sigmaAt(corners);
        Agreement agreement = Agreement.of(lines, fitted);
        Optional<Affine<SheetPoint, RasterPoint>> exact = ExactFrames.agreeing(frames, fitted.map(), corners, sigma);
        return new Attempt(fitted, exact.orElse(fitted.map()), exact.isPresent() ? 0 : sigma, agreement, sifting);
    }

    /** How probable it is that the pass belongs here, 0 to 1. */
    double confidence() {
        boolean framed = sigma == 0;
        boolean enough = agreement.edges() >= LEAST_EDGES && sigma < MOST_SIGMA && map.determinant() > 0;
        if (sifting.isPresent()) {
            return enough ? sifting.get().confidence() : Math.min(sifting.get().confidence(), DOUBTFUL);
        }
        boolean seen = agreement.seen() >= (framed ? LEAST_SEEN_FRAMED : LEAST_SEEN);
        double belief = Math.min(
                logistic((agreement.score() - (framed ? EVEN_FRAMED : EVEN)) / STEP),
                logistic((agreement.lines() + (framed ? FRAMED : 0) - LEAST_LINES) / LINES_STEP));
        return enough && seen ? belief : Math.min(belief, DOUBTFUL);
    }

    static double logistic(double x) {
        return 1 / (1 + Math.exp(-x));
    }

    boolean accepted() {
        return confidence() > 0.5;
    }

    /** True if too few edges were found to say anything. */
    boolean blind() {
        return agreement.edges() < LEAST_EDGES;
    }

    /** True if the edges agree but do not hold the placement in place. */
    boolean loose() {
        return !(sigma < MOST_SIGMA);
    }
}
