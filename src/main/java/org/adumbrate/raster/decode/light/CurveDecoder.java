package org.adumbrate.raster.decode.light;

import org.adumbrate.raster.LightDecoder;
import org.adumbrate.raster.Samples;

/** One curve, tabulated, for all channels. */
final class CurveDecoder implements LightDecoder {
    private final int channels;
    private final float[] table;

    /**
     * @param channels 1 or 3
     * @param table the light of every code
     */
    CurveDecoder(int channels, float[] table) {
        this.channels = channels;
        this.table = table;
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
        int count = pixels * channels;
        if (samples instanceof Samples.Bytes bytes) {
            byte[] codes = bytes.values();
            for (int i = 0; i < count; i++) {
                light[at + i] = table[codes[from + i] & 0xff];
            }
        } else {
            short[] codes = ((Samples.Shorts) samples).values();
            for (int i = 0; i < count; i++) {
                light[at + i] = table[codes[from + i] & 0xffff];
            }
        }
    }
}
