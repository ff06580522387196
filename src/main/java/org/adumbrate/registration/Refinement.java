package org.adumbrate.registration;

import java.util.Comparator;
import java.util.List;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/**
 * Brings a placement to a fraction of a pixel: edges are measured across the lines, the map is fitted to them, and again at the
 * next finer resolution.
 */
final class Refinement {
    /** Passes of dark valleys, steps and both; and passes with drawn edges. */
    static final List<EdgeModel> MODELS = List.of(
            new EdgeModel(0.6, EdgeModel.Shape.STEP, EdgeModel.Shape.KINK),
            new EdgeModel(0.6, EdgeModel.Shape.KINK, EdgeModel.Shape.LINE),
            new EdgeModel(0.8, EdgeModel.Shape.KINK, EdgeModel.Shape.LINE),
            new EdgeModel(1.1, EdgeModel.Shape.STEP, EdgeModel.Shape.KINK),
            new EdgeModel(1.1, EdgeModel.Shape.KINK, EdgeModel.Shape.LINE));

    private static final int ROUNDS = 3;
    private static final int FIRST_ROUNDS = 2;

    /** Edge models that explain at least this share of what the best explains compete by how well they fix the placement. */
    private static final double NEARLY = 0.85;

    /** Every so many probes decide what the edges are made of. */
    private static final int CHOICE_STRIDE = 3;

    private final LinePattern lines;
    private final List<PassLevel> levels;

    /** @param levels the pass from the coarsest resolution to the finest */
    Refinement(LinePattern lines, List<PassLevel> levels) {
        this.lines = lines;
        this.levels = levels;
    }

    /** Refines at the coarsest resolution only, as far as is needed to compare; the map is to pixels of the pass. */
    Fitted first(Affine<SheetPoint, RasterPoint> map) {
        return at(levels.get(0), map, FIRST_ROUNDS);
    }

    /** Refines a rough placement from the coarsest resolution to the finest. */
    Fitted of(Affine<SheetPoint, RasterPoint> map) {
        return on(first(map));
    }

    /**
     * Refines on through the finer resolutions, and ends at the one that fixes the placement best: of a soft picture that is not
     * the finest.
     */
    Fitted on(Fitted start) {
        Fitted fitted = start;
        Fitted best = start;
        for (PassLevel level : levels) {
            fitted = at(level, fitted.map(), ROUNDS);
            best = fitted.sigma() < best.sigma() ? fitted : best;
        }
        return best;
    }

    /** Fits once more with another freedom, where the given placement was fitted. */
    Fitted with(PlacementFit.Freedom freedom, Fitted fitted) {
        return fit(fitted.level(), fitted.model(), fitted.map(), freedom, 2, 1);
    }

    /** Refines at a level with whichever edges agree best. */
    private Fitted at(PassLevel level, Affine<SheetPoint, RasterPoint> map, int rounds) {
        List<Fitted> tried = MODELS.stream()
                .map(model -> fit(level, model, map, PlacementFit.Freedom.STRETCH, 1, CHOICE_STRIDE))
                .toList();
        double most = tried.stream().mapToDouble(Fitted::beyondChance).max().orElse(0);
        Fitted best = tried.stream()
                .filter(f -> f.beyondChance() >= most - (1 - NEARLY) * Math.abs(most))
                .min(Comparator.comparingDouble(f -> f.sigma()))
                .orElseThrow();
        return fit(level, best.model(), best.map(), PlacementFit.Freedom.STRETCH, rounds, 1);
    }

    private Fitted fit(
            PassLevel level,
            EdgeModel model,
            Affine<SheetPoint, RasterPoint> start,
            PlacementFit.Freedom freedom,
            int rounds,
            int stride) {
        int times = level.image().reduction;
        Affine<SheetPoint, RasterPoint> map = Lay.reduced(start, times);
        PlacementFit fit = null;
        EdgeHits hits = null;
        for (int round = 0; round < rounds; round++) {
            hits = EdgeHits.find(lines.probes(), level, model, map, stride);
            fit = PlacementFit.of(freedom, lines.probes(), hits, map);
            map = fit.map();
        }
        return new Fitted(Lay.reduced(map, 1.0 / times), model, level, hits, fit);
    }
}
