package org.adumbrate.raster;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.adumbrate.geometry.PixelSize;

/** A raster of any size that is computed as it is read and held nowhere: restless 8-bit samples that tell every pixel. */
final class PatternReader implements RasterReader {
    private final RasterInfo info;
    private volatile int begun;

    PatternReader(PixelSize size, int channels) {
        this(size, channels, Orientation.TOP_LEFT);
    }

    PatternReader(PixelSize size, int channels, Orientation orientation) {
        this.info = new RasterInfo(
                Path.of("pattern"),
                "pattern",
                size,
                orientation,
                SampleType.BYTE,
                new Plain(channels),
                OptionalDouble.empty(),
                true,
                List.of());
    }

    private record Plain(int lightChannels) implements LightDecoder {
        @Override
        public int storedChannels() {
            return lightChannels;
        }

        @Override
        public void decode(Samples samples, int from, int pixels, float[] light, int at) {
            byte[] bytes = ((Samples.Bytes) samples).values();
            for (int k = 0; k < pixels * lightChannels; k++) {
                light[at + k] = (bytes[from + k] & 0xff) / 255f;
            }
        }
    }

    /** A sample as stored, 0 to 255. */
    static int sample(int k, int y) {
        int mixed = (k * 0x9E3779B1 + y * 0x85EBCA6B) ^ (y << 7);
        return ((mixed ^ (mixed >>> 15)) * 0x2C1B3C6D) >>> 24;
    }

    /** The rows that decoding has come to. */
    int begun() {
        return begun;
    }

    @Override
    public RasterInfo info() {
        return info;
    }

    @Override
    public void decode(SampleSink sink) {
        int count = info.stored().width() * info.light().storedChannels();
        byte[] row = new byte[count];
        for (int y = 0; y < info.stored().height(); y++) {
            begun = y;
            for (int k = 0; k < count; k++) {
                row[k] = (byte) sample(k, y);
            }
            sink.put(0, y, info.stored().width(), new Samples.Bytes(row), 0);
        }
    }

    @Override
    public void close() {
        // nothing is held
    }
}
