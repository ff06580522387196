package org.adumbrate.raster.decode.light;

import org.adumbrate.raster.LightDecoder;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.Samples;

/** Ink of no stated press: {@code (1 - c)(1 - k)} and so on, taken as encoded sRGB. */
final class PlainCmykDecoder implements LightDecoder {
    private static final int STEPS = 1 << 12;

    private final int full;
    private final float[] table;

    PlainCmykDecoder(SampleType type) {
        this.full = (1 << (8 * type.bytes())) - 1;
        this.table = new float[STEPS + 2];
        for (int i = 0; i < table.length; i++) {
            table[i] = (float) Curve.SRGB.light(Math.min(1, i / (double) STEPS));
        }
    }

    @Override
    public int storedChannels() {
        return 4;
    }

    @Override
    public int lightChannels() {
        return 3;
    }

    @Override
    public void decode(Samples samples, int from, int pixels, float[] light, int at) {
        float scale = 1f / full;
        int to = at;
        for (int i = from, end = from + 4 * pixels; i < end; i += 4) {
            float paper = 1 - scale * code(samples, i + 3);
            for (int ink = 0; ink < 3; ink++) {
                light[to++] = light((1 - scale * code(samples, i + ink)) * paper);
            }
        }
    }

    private static int code(Samples samples, int index) {
        return samples instanceof Samples.Bytes bytes
                ? bytes.values()[index] & 0xff
                : ((Samples.Shorts) samples).values()[index] & 0xffff;
    }

    /** The curve between its tabulated points; 4096 steps keep within 1e-7 of it. */
    private float light(float encoded) {
        float place = encoded * STEPS;
        int below = (int) place;
        float share = place - below;
        return table[below] + share * (table[below + 1] - table[below]);
    }
}
