package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The pencil that makes the sum of squared residuals least, by Gauss-Newton steps: orthogonal regression of all floors at
 * once, which counts the errors of both ends (Van Huffel and Vandewalle, "The total least squares problem", 1991).
 *
 * @param pencil the fit
 * @param horizonVariance of the horizon, in units of the residuals' variance; 0 if it was known, infinite if the lines say
 *     nothing about it
 * @param riseVariances of the rises, in the same way, in statures
 */
record PencilFit(Pencil pencil, double horizonVariance, List<Double> riseVariances) {
    private static final int MOST_STEPS = 40;
    private static final double CONVERGED_MM = 1e-9;

    /**
     * @param start where the steps begin
     * @param known what stays as it is in the start
     */
    static PencilFit of(List<Standing> standings, Pencil start, Known known) {
        Pencil pencil = start;
        NormalEquations equations = NormalEquations.of(standings, pencil, known);
        for (int step = 0; step < MOST_STEPS; step++) {
            double shift = equations.horizonStep();
            List<Double> rises = new ArrayList<>();
            double turn = 0;
            for (int k = 0; k < pencil.rises().size(); k++) {
                double change = equations.riseStep(k, shift);
                turn = Math.max(turn, Math.abs(change));
                rises.add(pencil.rises().get(k) + change);
            }
            if (!Double.isFinite(shift + turn)) {
                break;
            }
            pencil = new Pencil(pencil.horizon() + shift, rises, pencil.levels());
            equations = NormalEquations.of(standings, pencil, known);
            if (Math.abs(shift) + turn < CONVERGED_MM) {
                break;
            }
        }
        List<Double> variances = new ArrayList<>();
        for (int k = 0; k < pencil.rises().size(); k++) {
            variances.add(equations.riseVariance(k));
        }
        return new PencilFit(pencil, equations.horizonVariance(), variances);
    }

    /**
     * What the fit may not change.
     *
     * @param horizon the horizon
     * @param eye the rise of the first group, that of the floors with stated elevations
     * @param costOfUnknown what it costs to know none though there are some that might be it, as a logarithm
     */
    record Known(Optional<KnownHorizon> horizon, boolean eye, double costOfUnknown) {
        boolean isHorizonKnown() {
            return horizon.isPresent();
        }
    }
}
