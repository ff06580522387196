package org.adumbrate.raster;

import java.nio.file.Path;
import java.util.OptionalDouble;
import org.adumbrate.geometry.PixelSize;

/** A raster of 8-bit samples in memory, read as a file would be: for tests of what comes after decoding. */
public final class MemoryReader implements RasterReader {
    private final RasterInfo info;
    private final byte[] values;

    /** Samples are light in 1/255, not encoded. */
    public MemoryReader(int width, int height, int channels, byte[] values, Orientation orientation) {
        this.values = values;
        this.info = new RasterInfo(
                Path.of("memory"),
                "memory",
                new PixelSize(width, height),
                orientation,
                SampleType.BYTE,
                new Straight(channels),
                OptionalDouble.empty(),
                true);
    }

    private record Straight(int channels) implements LightDecoder {
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
            byte[] bytes = ((Samples.Bytes) samples).values();
            for (int k = 0; k < pixels * channels; k++) {
                light[at + k] = (bytes[from + k] & 0xff) / 255f;
            }
        }
    }

    @Override
    public RasterInfo info() {
        return info;
    }

    @Override
    public void decode(SampleSink sink) {
        int width = info.stored().width();
        int channels = info.light().storedChannels();
        Samples samples = new Samples.Bytes(values);
        for (int y = 0; y < info.stored().height(); y++) {
            sink.put(0, y, width, samples, y * width * channels);
        }
    }

    @Override
    public void close() {}
}
