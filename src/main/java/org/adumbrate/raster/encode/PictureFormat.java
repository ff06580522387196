package org.adumbrate.raster.encode;

import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;

/**
 * What a picture is written as.
 *
 * @param window the pixels that it shows, on the grid of the whole sheet
 * @param channels 1 (grey) or 3 (RGB)
 * @param bits 8 or 16 for a sample
 * @param dpi its resolution in pixels per inch
 * @param level effort of the deflate compression, 1 (fast) to 9 (small)
 * @param dithered whether 8-bit samples are dithered, so that gradients print without bands
 * @param transfer how samples stand for light; in proportion only with 16 bits
 */
public record PictureFormat(
        PixelBox window, int channels, int bits, double dpi, int level, boolean dithered, Transfer transfer) {
    /**
     * The deflate level used where none is asked for. Deflating by runs writes a tenth to a fifth more than zlib's level 6
     * does on renders, in a tenth of the time.
     */
    public static final int DEFAULT_LEVEL = 1;

    /** @throws IllegalArgumentException if a value is out of its range */
    public PictureFormat {
        if ((channels != 1 && channels != 3) || (bits != 8 && bits != 16) || !(dpi > 0) || level < 1 || level > 9) {
            throw new IllegalArgumentException("no picture has " + channels + " channels of " + bits + " bits at " + dpi
                    + " dpi and level " + level);
        }
        if (transfer == Transfer.LINEAR && bits != 16) {
            throw new IllegalArgumentException("eight bits are too few for light in proportion");
        }
    }

    /** A whole picture for people, its samples by the sRGB curve. */
    public PictureFormat(PixelSize size, int channels, int bits, double dpi, int level, boolean dithered) {
        this(PixelBox.of(size), channels, bits, dpi, level, dithered, Transfer.SRGB);
    }

    /** The same of a window. */
    public PictureFormat in(PixelBox part) {
        return new PictureFormat(part, channels, bits, dpi, level, dithered, transfer);
    }

    /** Its size. */
    public PixelSize size() {
        return window.size();
    }

    /** Bytes of one row of samples. */
    public int rowBytes() {
        return Math.multiplyExact(window.width(), channels * bits / 8);
    }

    /** How many rows make a strip of about a megabyte: enough to keep a core busy, few enough to stay in its cache. */
    public int stripRows() {
        return Math.max(8, Math.min(64, (1 << 20) / rowBytes()));
    }
}
