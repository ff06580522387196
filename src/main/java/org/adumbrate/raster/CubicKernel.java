package org.adumbrate.raster;

/**
 * A piecewise cubic resampling kernel of the family of Mitchell and Netravali, "Reconstruction Filters in Computer
 * Graphics", SIGGRAPH 1988, equation 8; |x| up to 2, in source pixels.
 *
 * @param b share of the B-spline, 0 to 1
 * @param c share of the cardinal spline, 0 to 1
 */
record CubicKernel(double b, double c) {
    /**
     * B = 0, C = 1/2, used for enlarging. It passes through the samples, so that a pass that is already at print
     * resolution comes out as it went in and the drawn edges of a render stay as crisp as they are; Mitchell's own choice
     * (1/3, 1/3) softens them. Its overshoot of 7.4 % at a step is cut off at black and white.
     */
    static final CubicKernel CATMULL_ROM = new CubicKernel(0, 0.5);

    /** B = C = 1/3, the paper's recommendation for continuous pictures; kept to check the formula. */
    static final CubicKernel MITCHELL = new CubicKernel(1 / 3.0, 1 / 3.0);

    /** The kernel's weight at a distance. */
    double weight(double distance) {
        double x = Math.abs(distance);
        if (x < 1) {
            return ((12 - 9 * b - 6 * c) * x * x * x + (-18 + 12 * b + 6 * c) * x * x + (6 - 2 * b)) / 6;
        }
        if (x < 2) {
            return ((-b - 6 * c) * x * x * x + (6 * b + 30 * c) * x * x + (-12 * b - 48 * c) * x + (8 * b + 24 * c))
                    / 6;
        }
        return 0;
    }
}
