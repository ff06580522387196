package org.adumbrate.raster;

import org.adumbrate.geometry.PixelSize;

/** Keeps the last few rows in memory: row y replaces row y - capacity. With room for every row it keeps them all. */
final class RingStore implements RowStore {
    private final int channels;
    private final Samples[] rows;
    private final SampleType type;
    private final int rowSamples;

    RingStore(PixelSize size, int channels, SampleType type, int capacity) {
        this.channels = channels;
        this.type = type;
        this.rowSamples = Math.multiplyExact(size.width(), channels);
        this.rows = new Samples[capacity];
    }

    @Override
    public void put(int x, int y, int pixels, Samples samples, int offset) {
        int slot = y % rows.length;
        if (rows[slot] == null) {
            rows[slot] = Samples.allocate(type, rowSamples);
        }
        rows[slot].copyFrom(x * channels, samples, offset, pixels * channels);
    }

    @Override
    public void decode(LightDecoder decoder, int x, int y, int pixels, float[] light, int at) {
        decoder.decode(rows[y % rows.length], x * channels, pixels, light, at);
    }

    @Override
    public void close() {
        java.util.Arrays.fill(rows, null);
    }
}
