package org.adumbrate.perspective;

import java.util.List;

/**
 * Height lines read as horizon and floors.
 *
 * @param fit the floors, fitted to the lines that stand on them
 * @param standings these lines; the others are strays
 * @param evidence how the reading was judged
 * @param known what was not fitted
 */
record Reading(PencilFit fit, List<Standing> standings, Evidence evidence, PencilFit.Known known) {
    Reading {
        standings = List.copyOf(standings);
    }

    /** The reading of lines by a fit. */
    static Reading of(Uprights lines, PencilFit fit, Evidence evidence, PencilFit.Known known) {
        return new Reading(fit, lines.standings(fit.pencil(), evidence), evidence, known);
    }

    Pencil pencil() {
        return fit.pencil();
    }

    /** How much better it explains the lines than chance does, as a logarithm. */
    double worth() {
        double worth = -known.horizon()
                .map(KnownHorizon::cost)
                .orElseGet(() -> known.costOfUnknown() + evidence.horizonCost(outlandishness()));
        for (int group = 0; group < pencil().rises().size(); group++) {
            if (isUsed(group)) {
                worth += worthOf(group);
            }
        }
        return worth;
    }

    /** How far the horizon lies above or below all lines, counted in the height of the band that they take up together. */
    private double outlandishness() {
        double top = standings.stream()
                .mapToDouble(one -> one.line().head().y())
                .min()
                .orElse(0);
        double bottom = standings.stream()
                .mapToDouble(one -> one.line().foot().y())
                .max()
                .orElse(0);
        double beyond = Math.max(0, Math.max(top - pencil().horizon(), pencil().horizon() - bottom));
        return beyond == 0 ? 0 : beyond / (bottom - top);
    }

    /** What the lines on a group of floors are worth, less what the group costs. */
    private double worthOf(int group) {
        double worth = -cost(group);
        for (Standing standing : standings) {
            if (level(standing).group() == group) {
                worth += evidence.of(pencil().residual(standing.line(), level(standing)));
                worth -= standing.run().cost();
            }
        }
        return worth;
    }

    private double cost(int group) {
        boolean isStated = isStated(group);
        if (isStated && known.eye()) {
            return 0;
        }
        boolean someAreStated = pencil().levels().stream().anyMatch(Level::isNamed);
        if (isStated) {
            return evidence.floorCost();
        }
        double cost = someAreStated ? evidence.unstatedFloorCost() : evidence.floorCost();
        return cost + Evidence.storeyCost(toTheNextFloor(group));
    }

    /** How far a floor lies above or below the nearest other one, in statures; 0 if there is no other. */
    private double toTheNextFloor(int group) {
        double rise = pencil().rises().get(group);
        return pencil().levels().stream()
                .filter(level -> level.group() != group && isUsed(level.group()))
                .mapToDouble(level -> Math.abs(pencil().ratio(level) - rise))
                .min()
                .orElse(0);
    }

    private boolean isStated(int group) {
        return pencil().levels().stream().anyMatch(level -> level.group() == group && level.isNamed());
    }

    private boolean isUsed(int group) {
        return standings.stream().anyMatch(standing -> level(standing).group() == group);
    }

    /** The floor of a line. */
    Level level(Standing standing) {
        return pencil().levels().get(standing.level());
    }

    /** Lines beyond what is needed to draw any horizon and floors through them. */
    int spareLines() {
        int spare = standings.size() - (known.isHorizonKnown() ? 0 : 1);
        for (int group = 0; group < pencil().rises().size(); group++) {
            spare -= isUsed(group) && !(known.eye() && isStated(group)) ? 1 : 0;
        }
        return spare;
    }

    /** True if lines at random would not do as well, whichever of them were taken for lines on a floor. */
    boolean isBeyondChance(Uprights lines) {
        double choice = standings.isEmpty()
                ? 0
                : Evidence.choiceCost(standings.size(), lines.strays(standings).size(), known.isHorizonKnown());
        return worth() > choice;
    }

    /** The lines on floors that are no accident: without those on a floor that chance may well have made of strays. */
    List<Standing> standingsBeyondChance(Uprights lines) {
        List<Standing> kept = standings;
        for (int group = 0; group < pencil().rises().size(); group++) {
            int here = group;
            int strays = lines.strays(kept).size();
            List<Standing> others = kept.stream()
                    .filter(standing -> level(standing).group() != here)
                    .toList();
            boolean isChance =
                    worthOf(group) < Evidence.choiceCost(kept.size() - others.size(), strays, known.isHorizonKnown());
            if (!isStated(group) && isChance) {
                kept = others;
            }
        }
        return kept;
    }

    /**
     * The standard error of the horizon, in mm.
     *
     * @param sigma how far ends of lines are drawn off, in mm, as a standard deviation
     */
    double horizonErrorMm(double sigma) {
        return known.horizon().map(KnownHorizon::errorMm).orElseGet(() -> sigma * Math.sqrt(fit.horizonVariance()));
    }

    /** The sum of squared residuals, in mm². */
    double squares() {
        double squares = 0;
        for (Standing standing : standings) {
            double residual = pencil().residual(standing.line(), level(standing));
            squares += residual * residual;
        }
        return squares;
    }
}
