package org.adumbrate.raster;

/**
 * How the samples along one axis of a target are mixed from those of a source: for each target sample a first source
 * sample and a few weights that add up to 1. Edges are repeated, so there is no fringe where the source ends.
 *
 * <p>Enlarging uses {@link CubicKernel#CATMULL_ROM}; reducing takes every source sample by the length of it that the
 * target sample covers (area-true). Both place sample centres at +0.5.
 */
final class AxisWeights {
    private final int[] first;
    private final int taps;
    private final float[] weights;
    private final float[] coverage;
    private final boolean isShift;

    private AxisWeights(int[] first, int taps, float[] weights, float[] coverage) {
        this.first = first;
        this.taps = taps;
        this.weights = weights;
        this.coverage = coverage;
        this.isShift = taps == 1 && first[first.length - 1] - first[0] == first.length - 1 && isAscending(first);
    }

    private static boolean isAscending(int[] first) {
        for (int k = 1; k < first.length; k++) {
            if (first[k] != first[k - 1] + 1) {
                return false;
            }
        }
        return true;
    }

    /**
     * Computes the weights of all target samples.
     *
     * @param source number of source samples
     * @param target number of target samples
     * @param scale source samples for one target sample; negative if the axis runs the other way
     * @param origin source position of the target's edge 0
     */
    static AxisWeights of(int source, int target, double scale, double origin) {
        return of(source, target, 0, target, scale, origin);
    }

    /**
     * Computes the weights of a window of the target samples: the very ones that these have among all.
     *
     * @param from the first of the window
     * @param count how many there are in it; they count from 0 from here on
     */
    static AxisWeights of(int source, int target, int from, int count, double scale, double origin) {
        double step = Math.abs(scale);
        boolean reducing = step > 1 + 1e-9;
        int wanted = Math.min(source, reducing ? (int) Math.ceil(step) + 1 : 4);
        int[] first = new int[count];
        double[] weights = new double[Math.multiplyExact(count, wanted)];
        float[] coverage = new float[count];
        for (int k = 0; k < count; k++) {
            double centre = origin + scale * (from + k + 0.5);
            coverage[k] = coverage(centre - step / 2, centre + step / 2, source);
            weigh(centre, step, source, k, wanted, first, weights);
        }
        return meetsSamples(source, target, wanted, scale, origin)
                ? narrowed(first, wanted, coverage, weights)
                : new AxisWeights(first, wanted, toFloat(weights), coverage);
    }

    private static void weigh(double centre, double step, int source, int k, int taps, int[] first, double[] weights) {
        if (step > 1 + 1e-9) {
            area(centre, step, source, k, taps, first, weights);
        } else {
            cubic(centre, source, k, taps, first, weights);
        }
    }

    /** True if every target sample, within a window or not, is a source sample: then there is nothing to mix. */
    private static boolean meetsSamples(int source, int target, int taps, double scale, double origin) {
        int[] first = new int[1];
        double[] weights = new double[taps];
        for (int k = 0; k < target; k++) {
            java.util.Arrays.fill(weights, 0);
            weigh(origin + scale * (k + 0.5), Math.abs(scale), source, 0, taps, first, weights);
            if (taps > 1 && weights[heaviest(weights, 0, taps)] < 1 - 1e-9) {
                return false;
            }
        }
        return true;
    }

    private static int heaviest(double[] weights, int from, int taps) {
        int best = 0;
        for (int j = 0; j < taps; j++) {
            if (weights[from + j] > weights[from + best]) {
                best = j;
            }
        }
        return best;
    }

    private static void cubic(double centre, int source, int k, int taps, int[] first, double[] weights) {
        double position = centre - 0.5;
        double base = Math.floor(position) - 1;
        first[k] = (int) Math.max(0, Math.min(base, source - taps));
        double sum = 0;
        for (int j = 0; j < 4; j++) {
            double weight = CubicKernel.CATMULL_ROM.weight(position - (base + j));
            int index = (int) Math.max(0, Math.min(base + j, source - 1.0));
            weights[k * taps + Math.max(0, Math.min(index - first[k], taps - 1))] += weight;
            sum += weight;
        }
        settle(k, taps, weights, sum);
    }

    private static void area(double centre, double step, int source, int k, int taps, int[] first, double[] weights) {
        double from = centre - step / 2;
        double to = centre + step / 2;
        double base = Math.floor(from);
        first[k] = (int) Math.max(0, Math.min(base, source - taps));
        double sum = 0;
        for (int j = 0; j <= Math.ceil(step); j++) {
            double weight = Math.min(to, base + j + 1) - Math.max(from, base + j);
            if (weight > 0) {
                int index = (int) Math.max(0, Math.min(base + j, source - 1.0));
                weights[k * taps + Math.max(0, Math.min(index - first[k], taps - 1))] += weight;
                sum += weight;
            }
        }
        settle(k, taps, weights, sum);
    }

    /** Makes the weights of one target sample add up to 1. */
    private static void settle(int k, int taps, double[] weights, double sum) {
        for (int j = 0; j < taps; j++) {
            weights[k * taps + j] /= sum;
        }
    }

    private static float coverage(double from, double to, int source) {
        double inside = Math.min(to, source) - Math.max(from, 0);
        double share = Math.max(0, Math.min(1, inside / (to - from)));
        return share > 1 - 1e-6 ? 1 : (float) share;
    }

    /** One tap is enough where every target sample is a source sample. */
    private static AxisWeights narrowed(int[] first, int taps, float[] coverage, double[] weights) {
        int[] only = new int[first.length];
        for (int k = 0; k < first.length; k++) {
            only[k] = first[k] + heaviest(weights, k * taps, taps);
        }
        float[] ones = new float[first.length];
        java.util.Arrays.fill(ones, 1);
        return new AxisWeights(only, 1, ones, coverage);
    }

    private static float[] toFloat(double[] values) {
        float[] floats = new float[values.length];
        for (int k = 0; k < values.length; k++) {
            floats[k] = (float) values[k];
        }
        return floats;
    }

    /** Source samples that each target sample is mixed from. */
    int taps() {
        return taps;
    }

    /** The first source sample of a target sample. */
    int first(int k) {
        return first[k];
    }

    /** The weight of the j-th source sample of a target sample. */
    float weight(int k, int j) {
        return weights[k * taps + j];
    }

    /** The share of a target sample that the source covers, 0 to 1. */
    float coverage(int k) {
        return coverage[k];
    }

    /**
     * Mixes one row: {@code target[k] = sum of weight · source} for each channel.
     *
     * @param from which sample the row begins with
     */
    void mix(float[] source, int from, float[] target, int channels) {
        if (isShift) {
            System.arraycopy(source, (first[0] - from) * channels, target, 0, first.length * channels);
        } else if (taps == 4 && channels == 1) {
            mixFour(source, from, target);
        } else if (taps == 4 && channels == 3) {
            mixFourRgb(source, from, target);
        } else {
            mixAny(source, from, target, channels);
        }
    }

    private void mixFour(float[] source, int from, float[] target) {
        for (int k = 0, w = 0; k < first.length; k++, w += 4) {
            int s = first[k] - from;
            target[k] = weights[w] * source[s]
                    + weights[w + 1] * source[s + 1]
                    + weights[w + 2] * source[s + 2]
                    + weights[w + 3] * source[s + 3];
        }
    }

    private void mixFourRgb(float[] source, int from, float[] target) {
        for (int k = 0, w = 0, t = 0; k < first.length; k++, w += 4, t += 3) {
            int s = 3 * (first[k] - from);
            float a = weights[w];
            float b = weights[w + 1];
            float c = weights[w + 2];
            float d = weights[w + 3];
            target[t] = a * source[s] + b * source[s + 3] + c * source[s + 6] + d * source[s + 9];
            target[t + 1] = a * source[s + 1] + b * source[s + 4] + c * source[s + 7] + d * source[s + 10];
            target[t + 2] = a * source[s + 2] + b * source[s + 5] + c * source[s + 8] + d * source[s + 11];
        }
    }

    private void mixAny(float[] source, int from, float[] target, int channels) {
        for (int k = 0, t = 0; k < first.length; k++) {
            for (int c = 0; c < channels; c++, t++) {
                float sum = 0;
                int s = (first[k] - from) * channels + c;
                for (int j = 0; j < taps; j++, s += channels) {
                    sum += weights[k * taps + j] * source[s];
                }
                target[t] = sum;
            }
        }
    }
}
