package org.adumbrate.perspective;

/**
 * What a reading of height lines is worth, as the logarithm of how many times better it explains them than chance does
 * (Schwarz, "Estimating the dimension of a model", Annals of Statistics 6(2), 1978). A line on a floor earns what its
 * closeness is worth; every floor and a horizon that has to be found cost what they could have been otherwise. So a floor needs two lines,
 * and a horizon a third.
 *
 * @param sigma how far the ends of lines are drawn off, in mm, as a standard deviation
 */
record Evidence(double sigma) {
    /** Ends of lines are off by this range when they stand on no floor: a partly hidden line is as much too short. */
    private static final double STRAY_RANGE_MM = 50;

    /** A floor's eye height comes from a range that is e^7 times as wide as two lines of 25 mm, 0.1 mm off, tell it. */
    private static final double FLOOR_COST = 7;

    /** A horizon is sought in a range that is e^6 times as wide as usual lines tell it. */
    private static final double HORIZON_COST = 6;

    private static final double USUAL_SIGMA = 0.1;

    /** What a line that lies exactly on a floor is worth. */
    double most() {
        return Math.log(STRAY_RANGE_MM / (sigma * Math.sqrt(2 * Math.PI)));
    }

    /** What a line is worth that is so many mm off a floor; 0 at least, when it is better explained as a stray. */
    double of(double residual) {
        double off = residual / sigma;
        return Math.max(0, most() - off * off / 2);
    }

    /** The residual in mm beyond which a line is a stray. */
    double gate() {
        return sigma * Math.sqrt(2 * most());
    }

    /** What it costs to have one more unknown eye height. */
    double floorCost() {
        return FLOOR_COST + Math.log(USUAL_SIGMA / sigma);
    }

    /** What it costs to have an unknown horizon. */
    double horizonCost() {
        return HORIZON_COST + Math.log(USUAL_SIGMA / sigma);
    }
}
