package org.adumbrate.underlay;

import java.io.IOException;
import org.adumbrate.raster.LightRows;
import org.adumbrate.raster.Luminance;

/**
 * How often each tone occurs in a pass, in steps of encoded luminance, and the mean light of each channel at each step.
 * Large passes are sampled by every so-manieth row.
 */
final class HistogramOfLight {
    /** Steps of encoded luminance; one step is one 8-bit level. */
    static final int STEPS = 256;

    private static final long ENOUGH = 40_000_000;

    private final long[] counts = new long[STEPS];
    private final double[][] sums = new double[3][STEPS];
    private long total;
    private boolean grey;

    static HistogramOfLight of(LightRows rows) throws IOException {
        HistogramOfLight histogram = new HistogramOfLight();
        int width = rows.size().width();
        int height = rows.size().height();
        int stride = (int) Math.max(1, rows.size().count() / ENOUGH);
        float[] line = new float[width * rows.channels()];
        histogram.grey = stride == 1 || rows.channels() == 1;
        for (int y = stride / 2; y < height; y += stride) {
            rows.releaseAbove(y);
            rows.read(0, y, width, 1, line);
            histogram.add(line, width, rows.channels());
        }
        return histogram;
    }

    private void add(float[] line, int pixels, int channels) {
        int last = channels - 1;
        for (int k = 0, s = 0; k < pixels; k++, s += channels) {
            float r = line[s];
            float g = line[s + Math.min(1, last)];
            float b = line[s + last];
            int step = ToneSteps.of(Luminance.RED * r + Luminance.GREEN * g + Luminance.BLUE * b);
            counts[step]++;
            sums[0][step] += r;
            sums[1][step] += g;
            sums[2][step] += b;
            grey &= r == g && g == b;
        }
        total += pixels;
    }

    /** True if every pixel is known to be a grey, however many channels the pass has. */
    boolean isGrey() {
        return grey;
    }

    long total() {
        return total;
    }

    /** How many pixels have a tone of steps from to to, both included. */
    long count(int from, int to) {
        long sum = 0;
        for (int k = Math.max(0, from); k <= Math.min(STEPS - 1, to); k++) {
            sum += counts[k];
        }
        return sum;
    }

    /** The mean light of one channel over steps from to to, both included. */
    double mean(int channel, int from, int to) {
        double sum = 0;
        for (int k = Math.max(0, from); k <= Math.min(STEPS - 1, to); k++) {
            sum += sums[channel][k];
        }
        return sum / Math.max(1, count(from, to));
    }
}
