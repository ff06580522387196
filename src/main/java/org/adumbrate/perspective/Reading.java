package org.adumbrate.perspective;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Height lines read as horizon and floors.
 *
 * @param fit the floors, fitted to the lines that stand on them
 * @param standings these lines; the others are strays
 * @param evidence how the reading was judged
 * @param worth how much better it explains the lines than chance does, as a logarithm
 */
record Reading(PencilFit fit, List<Standing> standings, Evidence evidence, double worth) {
    /** The reading of lines by a fit: who stands on a floor, and what that is worth. */
    static Reading of(List<HeightLine> lines, PencilFit fit, Evidence evidence, PencilFit.Known known) {
        Pencil pencil = fit.pencil();
        List<Standing> standings = Standing.of(lines, pencil, evidence.gate());
        Set<Integer> unknown = new HashSet<>();
        double worth = 0;
        for (Standing standing : standings) {
            Level level = pencil.levels().get(standing.level());
            worth += evidence.of(pencil.residual(standing.line(), level));
            if (!(known.eye() && level.group() == 0)) {
                unknown.add(level.group());
            }
        }
        worth -= unknown.size() * evidence.floorCost() + (known.horizon() ? 0 : evidence.horizonCost());
        return new Reading(fit, standings, evidence, worth);
    }

    Pencil pencil() {
        return fit.pencil();
    }

    /** Lines beyond what is needed to draw any horizon and floors through them. */
    int spareLines(PencilFit.Known known) {
        long groups = standings.stream()
                .map(standing -> pencil().levels().get(standing.level()).group())
                .filter(group -> !(known.eye() && group == 0))
                .distinct()
                .count();
        return standings.size() - (int) groups - (known.horizon() ? 0 : 1);
    }

    /** The sum of squared residuals, in mm². */
    double squares() {
        double squares = 0;
        for (Standing standing : standings) {
            double residual =
                    pencil().residual(standing.line(), pencil().levels().get(standing.level()));
            squares += residual * residual;
        }
        return squares;
    }
}
