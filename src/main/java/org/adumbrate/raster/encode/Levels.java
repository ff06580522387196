package org.adumbrate.raster.encode;

import java.io.IOException;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.raster.Halt;
import org.adumbrate.raster.LightSink;

/**
 * A picture in memory, in encoded sRGB with 8 bits: the very samples that the encoders write. Filled by one rendering, and not changed
 * afterwards.
 */
public final class Levels implements LightSink {
    private final PixelBox window;
    private final int channels;
    private final boolean dithered;
    private final Halt halt;
    private final byte[] samples;

    private record Filled() implements Strip {}

    /**
     * @param window the pixels of the grid that it holds
     * @param channels 1 or 3
     * @param dithered as of {@link PictureFormat}
     * @param halt ends the rendering
     */
    public Levels(PixelBox window, int channels, boolean dithered, Halt halt) {
        this.window = window;
        this.channels = channels;
        this.dithered = dithered;
        this.halt = halt;
        this.samples = new byte[Math.multiplyExact(Math.multiplyExact(window.width(), window.height()), channels)];
    }

    /** The pixels of the grid that it holds. */
    public PixelBox window() {
        return window;
    }

    /** 1 or 3. */
    public int channels() {
        return channels;
    }

    /** Its samples, row by row, the channels of a pixel together. */
    public byte[] samples() {
        return samples.clone();
    }

    @Override
    public Filler filler() {
        Quantizer quantizer = new Quantizer(dithered);
        int count = window.width() * channels;
        byte[] row = new byte[count];
        return new Filler() {
            private int y;

            @Override
            public void begin(int first, int rows) {
                y = first;
            }

            @Override
            public void row(float[] light) {
                quantizer.toBytes(light, count, channels, window.left(), y, row);
                System.arraycopy(row, 0, samples, (y - window.top()) * count, count);
                y++;
            }

            @Override
            public Strip end() {
                return new Filled();
            }
        };
    }

    @Override
    public void take(Strip strip) throws IOException {
        halt.check();
    }
}
