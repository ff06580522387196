package org.adumbrate.raster.decode.icc;

import org.adumbrate.raster.LightDecoder;
import org.adumbrate.raster.Samples;
import org.adumbrate.raster.decode.light.Matrix3;

/**
 * A colour transform known at the points of a grid over its stored channels, and interpolated linearly along each of them.
 * The grid holds cube roots of X, Y and Z, which are near to the L*a*b* that profiles hold themselves, and so does not stop
 * at the bounds of sRGB, where the interpolation would meet an edge; the colour is cut to them last.
 */
final class GridDecoder implements LightDecoder {
    private final int channels;
    private final int side;
    private final float[] grid;
    private final float[][] places;
    private final float[] toSrgb = new float[9];

    /**
     * @param side points of the grid along each channel
     * @param grid cube roots of X, Y and Z of each point, under D50; the last channel varies fastest
     * @param places for each stored channel, where along the grid each code lies, 0 to 1
     */
    GridDecoder(int side, float[] grid, float[][] places) {
        this.channels = places.length;
        this.side = side;
        this.places = places;
        this.grid = grid;
        double[] entries = Matrix3.SRGB_TO_D50.inverse().entries();
        for (int i = 0; i < entries.length; i++) {
            toSrgb[i] = (float) entries[i];
        }
    }

    @Override
    public int storedChannels() {
        return channels;
    }

    @Override
    public int lightChannels() {
        return 3;
    }

    @Override
    public void decode(Samples samples, int from, int pixels, float[] light, int at) {
        int corners = 1 << channels;
        int[] offsets = new int[corners];
        float[] weights = new float[corners];
        int previous = -1;
        for (int i = 0, to = at; i < pixels; i++, to += 3) {
            int source = from + i * channels;
            if (previous >= 0 && isSame(samples, source, previous)) {
                System.arraycopy(light, to - 3, light, to, 3);
                continue;
            }
            previous = source;
            weigh(samples, source, offsets, weights);
            mix(offsets, weights, light, to);
        }
    }

    private boolean isSame(Samples samples, int a, int b) {
        for (int c = 0; c < channels; c++) {
            if (code(samples, a + c) != code(samples, b + c)) {
                return false;
            }
        }
        return true;
    }

    /** Places and weights of the corners of the cell that a colour lies in. */
    private void weigh(Samples samples, int source, int[] offsets, float[] weights) {
        offsets[0] = 0;
        weights[0] = 1;
        int corners = 1;
        for (int c = 0; c < channels; c++) {
            float place = places[c][code(samples, source + c)] * (side - 1);
            int below = Math.min((int) place, side - 2);
            float share = place - below;
            for (int k = 0; k < corners; k++) {
                int base = offsets[k] * side + below;
                float weight = weights[k];
                offsets[k] = base;
                weights[k] = weight * (1 - share);
                offsets[k + corners] = base + 1;
                weights[k + corners] = weight * share;
            }
            corners *= 2;
        }
    }

    private void mix(int[] offsets, float[] weights, float[] light, int to) {
        float x = 0;
        float y = 0;
        float z = 0;
        for (int k = 0; k < offsets.length; k++) {
            int point = offsets[k] * 3;
            float weight = weights[k];
            x += weight * grid[point];
            y += weight * grid[point + 1];
            z += weight * grid[point + 2];
        }
        x *= x * x;
        y *= y * y;
        z *= z * z;
        float[] m = toSrgb;
        light[to] = cut(m[0] * x + m[1] * y + m[2] * z);
        light[to + 1] = cut(m[3] * x + m[4] * y + m[5] * z);
        light[to + 2] = cut(m[6] * x + m[7] * y + m[8] * z);
    }

    private static float cut(float value) {
        return Math.max(0, Math.min(1, value));
    }

    private static int code(Samples samples, int index) {
        return samples instanceof Samples.Bytes bytes
                ? bytes.values()[index] & 0xff
                : ((Samples.Shorts) samples).values()[index] & 0xffff;
    }
}
