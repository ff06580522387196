package org.adumbrate.raster.encode;

import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;

/** Keeps a picture in memory as 8-bit sRGB, for small pictures that something is still drawn on. */
public final class PixelArray implements StripEncoder {
    private final PictureFormat format;
    private final int[] pixels;
    private int filled;

    /** @param size its size */
    public PixelArray(PixelSize size, int channels) {
        this(PixelBox.of(size), channels);
    }

    /** @param window the pixels of the whole sheet that it shows */
    public PixelArray(PixelBox window, int channels) {
        this.format = new PictureFormat(window.size(), channels, 8, 72, 1, true).in(window);
        this.pixels = new int[Math.toIntExact(window.size().count())];
    }

    /** The pixels, {@code 0xffrrggbb}, row by row; complete once every strip is appended. */
    public int[] pixels() {
        return pixels;
    }

    @Override
    public Filler filler() {
        return new StripPacker(format, 0) {
            @Override
            void filter(byte[] row, byte[] strip, int at) {
                System.arraycopy(row, 0, strip, at, row.length);
            }

            @Override
            Packed pack(byte[] strip, int length, boolean last) {
                return new PackedStrip(java.util.Arrays.copyOf(strip, length), 0, length);
            }
        };
    }

    @Override
    public void take(Strip strip) {
        byte[] samples = ((PackedStrip) strip).data();
        int channels = format.channels();
        for (int k = 0; k < samples.length; k += channels) {
            int r = samples[k] & 0xff;
            int g = samples[k + channels / 2] & 0xff;
            int b = samples[k + channels - 1] & 0xff;
            pixels[filled++] = 0xff000000 | r << 16 | g << 8 | b;
        }
    }

    @Override
    public long finish() {
        return 4L * pixels.length;
    }

    @Override
    public void close() {}
}
