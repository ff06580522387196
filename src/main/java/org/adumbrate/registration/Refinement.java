package org.adumbrate.registration;

import java.util.ArrayList;
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
            new EdgeModel(EdgeModel.Shape.STEP, EdgeModel.Shape.KINK),
            new EdgeModel(EdgeModel.Shape.KINK, EdgeModel.Shape.LINE));

    private static final int ROUNDS = 3;

    private final LinePattern lines;
    private final List<PassLevel> levels;

    /** @param levels the pass from the coarsest resolution to the finest */
    Refinement(LinePattern lines, List<PassLevel> levels) {
        this.lines = lines;
        this.levels = levels;
    }

    /** Refines at the coarsest resolution only, with whichever edges fit better; the map is to pixels of the pass. */
    Fitted first(Affine<SheetPoint, RasterPoint> map) {
        Fitted best = null;
        for (EdgeModel model : MODELS) {
            Fitted fitted = at(levels.get(0), model, map, PlacementFit.Freedom.STRETCH, ROUNDS);
            best = best == null || fitted.support() > best.support() ? fitted : best;
        }
        return best;
    }

    /** Refines on through all resolutions; the last fits are one with and one without stretch. */
    List<Fitted> on(Fitted start) {
        Fitted fitted = start;
        for (PassLevel level : levels) {
            Fitted best = null;
            for (EdgeModel model : MODELS) {
                Fitted next = at(level, model, fitted.map(), PlacementFit.Freedom.STRETCH, ROUNDS);
                best = best == null || next.support() > best.support() ? next : best;
            }
            fitted = best;
        }
        PassLevel finest = levels.get(levels.size() - 1);
        List<Fitted> last = new ArrayList<>();
        for (PlacementFit.Freedom freedom : PlacementFit.Freedom.values()) {
            last.add(at(finest, fitted.model(), fitted.map(), freedom, 2));
        }
        return last;
    }

    private Fitted at(
            PassLevel level,
            EdgeModel model,
            Affine<SheetPoint, RasterPoint> start,
            PlacementFit.Freedom freedom,
            int rounds) {
        int times = level.image().reduction;
        Affine<SheetPoint, RasterPoint> map = Lay.reduced(start, times);
        PlacementFit fit = null;
        EdgeHits hits = null;
        for (int round = 0; round < rounds; round++) {
            hits = EdgeHits.find(lines.probes(), level, model, map, 1);
            fit = PlacementFit.of(freedom, lines.probes(), hits, map);
            map = fit.map();
        }
        return new Fitted(Lay.reduced(map, 1.0 / times), model, level, hits, fit);
    }
}
