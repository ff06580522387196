package org.adumbrate.perspective;

import java.util.List;

/**
 * The normal equations of a pencil: one unknown for the horizon, which every line tells about, and one for each group of
 * floors, which only its own lines do. The groups are eliminated one by one (the Schur complement), so that no matrix is
 * needed.
 */
final class NormalEquations {
    /** The horizon is unknown to the lines when less than this share of their information on it is left. */
    private static final double NOTHING_LEFT = 1e-10;

    private final boolean horizonKnown;
    private final double[] mixed;
    private final double[] own;
    private final double[] ownSlope;
    private double horizonOwn;
    private double horizonSlope;
    private double left;
    private double slopeLeft;

    private NormalEquations(int groups, boolean horizonKnown) {
        this.horizonKnown = horizonKnown;
        mixed = new double[groups];
        own = new double[groups];
        ownSlope = new double[groups];
    }

    static NormalEquations of(List<Standing> standings, Pencil pencil, PencilFit.Known known) {
        NormalEquations equations = new NormalEquations(pencil.rises().size(), known.isHorizonKnown());
        for (Standing standing : standings) {
            Level level = pencil.levels().get(standing.level());
            equations.add(standing.line(), level, pencil, known.eye() && level.group() == 0);
        }
        equations.eliminateGroups();
        return equations;
    }

    /** Adds a line by the derivatives of its residual, (f - horizon - g height) / |(1 - g, g)|. */
    private void add(HeightLine line, Level level, Pencil pencil, boolean riseKnown) {
        double g = pencil.ratio(level);
        double norm = Pencil.norm(g);
        double residual = pencil.residual(line, level);
        double byHorizon = -1 / norm;
        double byRise = riseKnown ? 0 : -line.heightMm() / norm - residual * (2 * g - 1) / (norm * norm);
        horizonOwn += byHorizon * byHorizon;
        horizonSlope += byHorizon * residual;
        mixed[level.group()] += byHorizon * byRise;
        own[level.group()] += byRise * byRise;
        ownSlope[level.group()] += byRise * residual;
    }

    private void eliminateGroups() {
        left = horizonOwn;
        slopeLeft = horizonSlope;
        for (int k = 0; k < own.length; k++) {
            if (own[k] > 0) {
                left -= mixed[k] * mixed[k] / own[k];
                slopeLeft -= mixed[k] * ownSlope[k] / own[k];
            }
        }
    }

    private boolean tellsHorizon() {
        return left > NOTHING_LEFT * horizonOwn;
    }

    double horizonStep() {
        return horizonKnown || !tellsHorizon() ? 0 : -slopeLeft / left;
    }

    /** The step of a rise, given that of the horizon; 0 for a rise that is known or that no line tells about. */
    double riseStep(int group, double horizonStep) {
        return own[group] > 0 ? -(ownSlope[group] + mixed[group] * horizonStep) / own[group] : 0;
    }

    double horizonVariance() {
        if (horizonKnown) {
            return 0;
        }
        return tellsHorizon() ? 1 / left : Double.POSITIVE_INFINITY;
    }

    double riseVariance(int group) {
        if (!(own[group] > 0)) {
            return 0;
        }
        double share = mixed[group] / own[group];
        double byHorizon = share == 0 ? 0 : share * share * horizonVariance();
        return 1 / own[group] + byHorizon;
    }
}
