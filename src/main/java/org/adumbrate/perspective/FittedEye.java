package org.adumbrate.perspective;

import java.util.Map;
import java.util.Optional;

/**
 * The eye's height above elevation 0 as the height lines tell it.
 *
 * @param heightM in metres
 * @param errorM its standard error in metres
 */
record FittedEye(double heightM, double errorM) {
    /** A floor's error is believed to be this at least, in metres, so that none outweighs all others. */
    private static final double LEAST_ERROR_M = 1e-6;

    /**
     * From the floors that lines stand on: above the lowest, where no elevations are stated; else the mean over the floors
     * whose elevations are, each weighed by how surely it tells it. Nothing if there is no such floor.
     */
    static Optional<FittedEye> of(FittedHeights heights, Map<String, Double> elevationsM) {
        if (elevationsM.isEmpty()) {
            return heights.floors().stream()
                    .findFirst()
                    .map(lowest -> new FittedEye(lowest.eyeHeightM(), lowest.eyeHeightErrorM()));
        }
        double weights = 0;
        double sum = 0;
        double surest = Double.POSITIVE_INFINITY;
        for (FittedFloor floor : heights.floors()) {
            if (elevationsM.containsKey(floor.name()) && !floor.lines().isEmpty()) {
                double error = Math.max(LEAST_ERROR_M, floor.eyeHeightErrorM());
                double weight = 1 / (error * error);
                weights += weight;
                sum += weight * (floor.eyeHeightM() + elevationsM.get(floor.name()));
                surest = Math.min(surest, floor.eyeHeightErrorM());
            }
        }
        // one horizon lies behind all of them, so their errors do not average out
        return weights > 0 ? Optional.of(new FittedEye(sum / weights, surest)) : Optional.empty();
    }
}
