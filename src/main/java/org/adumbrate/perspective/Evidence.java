package org.adumbrate.perspective;

/**
 * What a reading of height lines is worth, as the logarithm of how many times better it explains them than chance does
 * (Schwarz, "Estimating the dimension of a model", Annals of Statistics 6(2), 1978). A line on a floor earns what its
 * closeness is worth; every floor and a horizon that has to be found cost what they could have been otherwise. So a floor
 * needs two lines, and a horizon a third.
 */
final class Evidence {
    /** Ends of lines are off by this range when they stand on no floor: a partly hidden line is as much too short. */
    private static final double STRAY_RANGE_MM = 50;

    /** A floor's eye height comes from a range that is e^7 times as wide as two lines of 25 mm, 0.1 mm off, tell it. */
    private static final double FLOOR_COST = 7;

    /** A horizon is sought in a range that is e^6 times as wide as usual lines tell it. */
    private static final double HORIZON_COST = 6;

    /** Where floors are stated, one that is not is e^4 times less likely. */
    private static final double UNSTATED_COST = 4;

    private static final double USUAL_STOREY = 2;

    private static final double USUAL_SIGMA = 0.1;

    private final double sigma;
    private final double precision;
    private final double most;

    /** @param sigma how far the ends of lines are drawn off, in mm, as a standard deviation */
    Evidence(double sigma) {
        this.sigma = sigma;
        precision = 1 / (2 * sigma * sigma);
        most = Math.log(STRAY_RANGE_MM / (sigma * Math.sqrt(2 * Math.PI)));
    }

    /** The same for ends that are twice as far off. */
    Evidence twiceAsRough() {
        return new Evidence(2 * sigma);
    }

    /** What a line is worth that is so many mm off a floor; 0 at least, when it is better explained as a stray. */
    double of(double residual) {
        return Math.max(0, most - precision * residual * residual);
    }

    /** The residual in mm beyond which a line is a stray. */
    double gate() {
        return sigma * Math.sqrt(2 * most);
    }

    /** What it costs to have one more unknown eye height. */
    double floorCost() {
        return FLOOR_COST + Math.log(USUAL_SIGMA / sigma);
    }

    /** What it costs to have a floor that is not among the stated ones. */
    double unstatedFloorCost() {
        return floorCost() + UNSTATED_COST;
    }

    /**
     * What it costs that a floor lies so far above or below the next: storeys of two statures, 3.3 m, and steps are usual, and
     * a floor apart from all others is the less likely the farther it is.
     */
    static double storeyCost(double statures) {
        return statures / USUAL_STOREY;
    }

    /**
     * What a floor must be worth not to be put down to chance: among many strays some agree, and more so at a horizon that
     * was itself found by these lines.
     *
     * @return the logarithm of the number of ways to pick the lines on the floor from these and the strays, and of e more
     *     where the horizon was not known
     */
    static double choiceCost(int onFloor, int strays, boolean horizonKnown) {
        double cost = horizonKnown ? 0 : 1;
        for (int k = 1; k <= onFloor; k++) {
            cost += Math.log((double) (strays + k) / k);
        }
        return cost;
    }

    /**
     * What it costs to have an unknown horizon. One far above or below everything is possible, as in a bird's eye view, but
     * less likely: without that, lines of about equal height would pass for a floor seen from very high up.
     *
     * @param beyond how far it lies above or below the lines, in heights of the band that they take up
     */
    double horizonCost(double beyond) {
        return HORIZON_COST + Math.log(USUAL_SIGMA / sigma) + 2 * Math.log1p(beyond);
    }
}
