package org.adumbrate.registration;

/**
 * Where, in a short profile across a line, the picture has its edge. Three kinds of edge occur, often together: a step (two faces,
 * or light and shadow), a kink (the dark valley that occlusion makes in a crease has a different slope on either side) and
 * a thin dark or bright line (drawn edges). Each begins exactly where the two faces meet, so for every trial position all three
 * are fitted at once, on top of a straight slope, and the position with the least residual wins. To look for the darkest
 * point instead would be off by up to half a pixel wherever the two sides differ.
 */
final class EdgeModel {
    /** The profile reaches so far both ways, in pixels. */
    static final int REACH = 4;

    /** Samples in a pixel. */
    static final int PER_PIXEL = 2;

    /** Samples of a profile. */
    static final int SAMPLES = 2 * REACH * PER_PIXEL + 1;

    /** Positions are tried so far both ways, in pixels. */
    static final double SEARCH = 2.5;

    private static final double TRIAL = 0.125;
    private static final int TRIALS = 1 + (int) (2 * SEARCH / TRIAL);

    private final int kinds;
    private final double[][] slope;
    private final double[][][] shapes;

    /** The shapes of which an edge may be made. */
    enum Shape {
        STEP,
        KINK,
        LINE
    }

    /**
     * @param blur standard deviation of the picture's blur, in pixels; a pixel's own area and the interpolation between
     *     pixels come to 0.6
     * @param made what an edge may be made of
     */
    EdgeModel(double blur, Shape... made) {
        kinds = made.length;
        double[] one = new double[SAMPLES];
        double[] ramp = new double[SAMPLES];
        for (int k = 0; k < SAMPLES; k++) {
            one[k] = 1;
            ramp[k] = position(k);
        }
        slope = new double[][] {one, ramp};
        orthonormalise(slope, new double[0][]);
        shapes = new double[TRIALS][kinds][SAMPLES];
        for (int t = 0; t < TRIALS; t++) {
            for (int s = 0; s < kinds; s++) {
                for (int k = 0; k < SAMPLES; k++) {
                    shapes[t][s][k] = value(made[s], (position(k) - trial(t)) / blur);
                }
            }
            orthonormalise(shapes[t], slope);
        }
    }

    /** The position of sample k along the profile, in pixels. */
    static double position(int k) {
        return (double) k / PER_PIXEL - REACH;
    }

    private static double trial(int t) {
        return t * TRIAL - SEARCH;
    }

    /** An edge in a profile. */
    static final class Edge {
        /** Position, in pixels. */
        double offset;

        /** Its standard deviation, in pixels. */
        double sigma;

        /** Share of the profile's variation about a straight slope that the edge explains, 0 to 1. */
        double explained;

        /** Root mean square of that variation, in tone. */
        double contrast;
    }

    /**
     * Finds the edge in a profile.
     *
     * @param profile {@link #SAMPLES} tones; changed
     * @param noise standard deviation of a sample
     * @param edge receives the result
     */
    void fit(double[] profile, double noise, Edge edge) {
        for (double[] base : slope) {
            double part = dot(base, profile);
            for (int k = 0; k < SAMPLES; k++) {
                profile[k] -= part * base[k];
            }
        }
        double total = dot(profile, profile);
        double[] energy = new double[TRIALS];
        int best = 0;
        for (int t = 0; t < TRIALS; t++) {
            for (double[] shape : shapes[t]) {
                double part = dot(shape, profile);
                energy[t] += part * part;
            }
            best = energy[t] > energy[best] ? t : best;
        }
        edge.contrast = Math.sqrt(total / SAMPLES);
        edge.explained = total > 0 ? energy[best] / total : 0;
        double residual = Math.max(0, total - energy[best]);
        double variance = Math.max(noise * noise, residual / (SAMPLES - 3 - kinds));
        peak(energy, best, variance, edge);
    }

    /** The top of the parabola through the best trial and its neighbours; its bend says how sure the position is. */
    private static void peak(double[] energy, int best, double variance, Edge edge) {
        if (best == 0 || best == TRIALS - 1) {
            edge.offset = trial(best);
            edge.sigma = Double.POSITIVE_INFINITY;
            return;
        }
        double bend = 2 * energy[best] - energy[best - 1] - energy[best + 1];
        double lean = (energy[best + 1] - energy[best - 1]) / 2;
        edge.offset = trial(best) + (bend > 0 ? TRIAL * lean / bend : 0);
        edge.sigma = bend > 0 ? Math.sqrt(2 * variance * TRIAL * TRIAL / bend) : Double.POSITIVE_INFINITY;
    }

    /** A shape of unit height at distance x, in standard deviations of the blur. */
    private static double value(Shape shape, double x) {
        double bell = Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
        return switch (shape) {
            case STEP -> normal(x);
            case KINK -> x * normal(x) + bell;
            case LINE -> bell;
        };
    }

    /** The normal distribution function, to 2e-7: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17. */
    private static double normal(double x) {
        double t = 1 / (1 + 0.2316419 * Math.abs(x));
        double tail = Math.exp(-x * x / 2)
                / Math.sqrt(2 * Math.PI)
                * t
                * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return x > 0 ? 1 - tail : tail;
    }

    /** Gram and Schmidt's process, first against the given vectors, then among themselves. */
    private static void orthonormalise(double[][] vectors, double[][] against) {
        for (int n = 0; n < vectors.length; n++) {
            for (int m = 0; m < against.length + n; m++) {
                double[] other = m < against.length ? against[m] : vectors[m - against.length];
                double part = dot(other, vectors[n]);
                for (int k = 0; k < SAMPLES; k++) {
                    vectors[n][k] -= part * other[k];
                }
            }
            double size = Math.sqrt(dot(vectors[n], vectors[n]));
            for (int k = 0; k < SAMPLES; k++) {
                vectors[n][k] /= size;
            }
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int k = 0; k < SAMPLES; k++) {
            sum += a[k] * b[k];
        }
        return sum;
    }
}
