package org.adumbrate.raster.decode.png;

import java.io.IOException;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.Samples;
import org.adumbrate.raster.decode.light.Alpha;
import org.adumbrate.raster.decode.light.ColourModel;
import org.adumbrate.raster.decode.light.PixelLayout;
import org.adumbrate.raster.decode.source.SourceFile;

/** Pixels that name entries of a palette; of one channel if the palette holds greys only. */
final class PngPalette implements PngPixels {
    private final SourceFile file;
    private final PixelLayout layout;
    private final int depth;
    private final byte[][] entries;
    private final byte[] samples;

    private PngPalette(SourceFile file, PixelLayout layout, int depth, byte[][] entries, int width) {
        this.file = file;
        this.layout = layout;
        this.depth = depth;
        this.entries = entries;
        this.samples = new byte[width * layout.channels()];
    }

    static PngPalette of(SourceFile file, int depth, int width, PngAncillary said) throws IOException {
        byte[] palette = said.palette();
        if (palette.length == 0) {
            throw file.damaged("it has no palette");
        }
        byte[] alphas = said.transparency();
        boolean grey = isGrey(palette);
        PixelLayout layout = new PixelLayout(
                grey ? ColourModel.GREY : ColourModel.RGB,
                alphas == null ? Alpha.NONE : Alpha.STRAIGHT,
                SampleType.BYTE);
        byte[][] entries = new byte[palette.length / 3][layout.channels()];
        for (int i = 0; i < entries.length; i++) {
            System.arraycopy(palette, 3 * i, entries[i], 0, layout.colour().channels());
            if (alphas != null) {
                entries[i][layout.channels() - 1] = i < alphas.length ? alphas[i] : (byte) 255;
            }
        }
        return new PngPalette(file, layout, depth, entries, width);
    }

    private static boolean isGrey(byte[] palette) {
        for (int i = 0; i < palette.length; i += 3) {
            if (palette[i] != palette[i + 1] || palette[i] != palette[i + 2]) {
                return false;
            }
        }
        return true;
    }

    @Override
    public PixelLayout layout() {
        return layout;
    }

    @Override
    public Samples unpack(byte[] row, int pixels) throws IOException {
        int to = 0;
        for (int i = 0; i < pixels; i++) {
            int code = PngPixels.code(row, i, depth);
            if (code >= entries.length) {
                throw file.damaged("a pixel names entry " + code + " of a palette of " + entries.length);
            }
            for (byte value : entries[code]) {
                samples[to++] = value;
            }
        }
        return new Samples.Bytes(samples);
    }
}
