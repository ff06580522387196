package org.adumbrate.raster.decode.tiff;

import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.Samples;

/**
 * Gathers a band of rows from pieces and passes it on as whole rows: tiles stand side by side in it, or channels that are
 * stored apart meet.
 */
final class RowBand implements SampleSink {
    private final SampleSink sink;
    private final int width;
    private final int channels;
    private final int height;
    private final Samples store;
    private int first;
    private int rows;

    /**
     * @param sink takes the rows
     * @param width of the picture
     * @param channels of a pixel
     * @param height rows of a band; a new band begins at each multiple
     */
    RowBand(SampleSink sink, int width, int channels, int height, SampleType type) {
        this.sink = sink;
        this.width = width;
        this.channels = channels;
        this.height = height;
        this.store = Samples.allocate(type, Math.multiplyExact(Math.multiplyExact(width, channels), height));
    }

    /** The memory that a band takes, in bytes. */
    static long bytes(int width, int channels, int height, SampleType type) {
        return (long) width * channels * height * type.bytes();
    }

    @Override
    public void put(int x, int y, int pixels, Samples samples, int offset) {
        store.copyFrom(place(x, y), samples, offset, pixels * channels);
    }

    /** A sink for one channel alone. */
    SampleSink channel(int channel) {
        return (x, y, pixels, samples, offset) -> {
            int place = place(x, y) + channel;
            for (int i = 0; i < pixels; i++, place += channels) {
                store.copyFrom(place, samples, offset + i, 1);
            }
        };
    }

    private int place(int x, int y) {
        if (y >= first + height) {
            finish();
            first = y / height * height;
        }
        rows = Math.max(rows, y - first + 1);
        return ((y - first) * width + x) * channels;
    }

    /** Passes on what has been gathered. */
    void finish() {
        for (int row = 0; row < rows; row++) {
            sink.put(0, first + row, width, store, row * width * channels);
        }
        rows = 0;
    }
}
