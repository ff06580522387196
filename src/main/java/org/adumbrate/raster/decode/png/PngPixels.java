package org.adumbrate.raster.decode.png;

import java.io.IOException;
import org.adumbrate.raster.Samples;
import org.adumbrate.raster.decode.light.Alpha;
import org.adumbrate.raster.decode.light.ColourModel;
import org.adumbrate.raster.decode.light.PixelLayout;
import org.adumbrate.raster.decode.source.SourceFile;

/** Turns a row of a PNG, as its bytes stand, into samples. */
interface PngPixels {
    /** How the samples are laid out. */
    PixelLayout layout();

    /**
     * The samples of a row's pixels, valid until the next call.
     *
     * @param row the row, its first byte at index 1
     * @throws IOException if a pixel has no colour
     */
    Samples unpack(byte[] row, int pixels) throws IOException;

    /** The index of the first sample in what {@link #unpack} gives. */
    default int offset() {
        return 0;
    }

    /** The way for a header and the chunks that follow it. */
    static PngPixels of(SourceFile file, PngHeader header, PngAncillary said) throws IOException {
        int width = header.size().width();
        PngPixels plain =
                switch (header.kind()) {
                    case PALETTE -> PngPalette.of(file, header.depth(), width, said);
                    case GREY -> plain(header, ColourModel.GREY, Alpha.NONE);
                    case GREY_ALPHA -> plain(header, ColourModel.GREY, Alpha.STRAIGHT);
                    case RGB -> plain(header, ColourModel.RGB, Alpha.NONE);
                    case RGB_ALPHA -> plain(header, ColourModel.RGB, Alpha.STRAIGHT);
                };
        boolean keyed = said.transparency() != null && header.kind().mayBeKeyed();
        return keyed ? PngKeyed.over(file, plain, header, said.transparency()) : plain;
    }

    private static PngPixels plain(PngHeader header, ColourModel colour, Alpha alpha) {
        PixelLayout layout = new PixelLayout(colour, alpha, header.type());
        if (header.depth() == 8) {
            return new AsStored(layout);
        }
        int width = header.size().width();
        return header.depth() == 16 ? new Wide(layout, width) : new Narrow(layout, header.depth(), width);
    }

    /** 8-bit samples: the row itself. */
    record AsStored(PixelLayout layout) implements PngPixels {
        @Override
        public Samples unpack(byte[] row, int pixels) {
            return new Samples.Bytes(row);
        }

        @Override
        public int offset() {
            return 1;
        }
    }

    /** 16-bit samples, the high byte first. */
    final class Wide implements PngPixels {
        private final PixelLayout layout;
        private final short[] samples;

        Wide(PixelLayout layout, int width) {
            this.layout = layout;
            this.samples = new short[width * layout.channels()];
        }

        @Override
        public PixelLayout layout() {
            return layout;
        }

        @Override
        public Samples unpack(byte[] row, int pixels) {
            for (int i = 0, count = pixels * layout.channels(); i < count; i++) {
                samples[i] = (short) ((row[2 * i + 1] << 8) | (row[2 * i + 2] & 0xff));
            }
            return new Samples.Shorts(samples);
        }
    }

    /** 1, 2 or 4 bits of grey, the first pixel in the highest bits; full scale becomes 255, exactly. */
    final class Narrow implements PngPixels {
        private final PixelLayout layout;
        private final int depth;
        private final byte[] samples;

        Narrow(PixelLayout layout, int depth, int width) {
            this.layout = layout;
            this.depth = depth;
            this.samples = new byte[width];
        }

        @Override
        public PixelLayout layout() {
            return layout;
        }

        @Override
        public Samples unpack(byte[] row, int pixels) {
            int scale = 255 / ((1 << depth) - 1);
            for (int i = 0; i < pixels; i++) {
                samples[i] = (byte) (code(row, i, depth) * scale);
            }
            return new Samples.Bytes(samples);
        }
    }

    /** The code of a pixel of 8 bits or fewer. */
    static int code(byte[] row, int pixel, int depth) {
        int bit = pixel * depth;
        return row[1 + (bit >> 3)] >> (8 - depth - (bit & 7)) & ((1 << depth) - 1);
    }
}
