package org.adumbrate.raster.decode.light;

import org.adumbrate.raster.LightDecoder;
import org.adumbrate.raster.Samples;

/**
 * Floating-point samples, which are light already. Values outside 0 to 1 pass; what is no number becomes 0, and the
 * infinite becomes {@link #LARGEST}, because one such pixel would spread over its neighbours in every resampling.
 */
final class FloatDecoder implements LightDecoder {
    /** The largest number of a 16-bit float (IEEE 754 binary16). */
    static final float LARGEST = 65504;

    private final int channels;

    FloatDecoder(int channels) {
        this.channels = channels;
    }

    @Override
    public int storedChannels() {
        return channels;
    }

    @Override
    public int lightChannels() {
        return channels;
    }

    @Override
    public void decode(Samples samples, int from, int pixels, float[] light, int at) {
        float[] values = ((Samples.Floats) samples).values();
        for (int i = 0, count = pixels * channels; i < count; i++) {
            float value = values[from + i];
            light[at + i] = Float.isNaN(value) ? 0 : Math.max(-LARGEST, Math.min(LARGEST, value));
        }
    }
}
