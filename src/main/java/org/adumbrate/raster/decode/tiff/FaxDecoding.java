package org.adumbrate.raster.decode.tiff;

import java.awt.Point;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.decode.fax.FaxBits;
import org.adumbrate.raster.decode.fax.FaxRows;
import org.adumbrate.raster.decode.fax.FaxScheme;
import org.adumbrate.raster.decode.metadata.TiffFields;
import org.adumbrate.raster.decode.metadata.TiffTag;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * One decoding of a facsimile in a TIFF.
 *
 * @param file the file
 * @param header how its pixels are stored
 * @param strips where its strips or tiles lie
 * @param pixels how they become samples
 */
record FaxDecoding(SourceFile file, TiffHeader header, FaxStrips strips, TiffPixels pixels) {
    /**
     * Where strips lie, and how they are packed.
     *
     * @param scheme how
     * @param reversed whether the first bit is the lowest
     * @param offsets where they begin
     * @param counts their bytes
     */
    @SuppressWarnings("ArrayRecordComponent") // compared by nobody
    record FaxStrips(FaxScheme scheme, boolean reversed, long[] offsets, long[] counts) {
        static FaxStrips of(TiffFields fields, TiffBlocks blocks) throws IOException {
            return new FaxStrips(
                    FaxScheme.of(fields),
                    fields.number(TiffTag.FILL_ORDER, 1) == 2,
                    fields.numbers(blocks.offsetsTag()),
                    fields.numbers(blocks.countsTag()));
        }
    }

    void run(SampleSink sink) throws IOException {
        if (pixels.bandHeight() == 0) {
            decode(sink);
            return;
        }
        RowBand band = new RowBand(
                sink,
                header.size().width(),
                pixels.layout().channels(),
                pixels.bandHeight(),
                pixels.layout().type());
        decode(band);
        band.finish();
    }

    private void decode(SampleSink sink) throws IOException {
        TiffBlocks blocks = header.blocks();
        PieceSamples samples = pixels.samples().get();
        FaxRows rows = new FaxRows(strips.scheme(), blocks.width());
        try (FileChannel channel = FileChannel.open(file.path())) {
            for (int k = 0; k < blocks.across() * blocks.down(); k++) {
                BufferedInputStream in = new BufferedInputStream(
                        Channels.newInputStream(channel.position(strips.offsets()[k])), 1 << 15);
                rows.begin(new FaxBits(in, strips.counts()[k], strips.reversed()));
                decodeBlock(k, rows, samples, sink);
            }
        }
    }

    private void decodeBlock(int block, FaxRows rows, PieceSamples samples, SampleSink sink) throws IOException {
        TiffBlocks blocks = header.blocks();
        int left = block % blocks.across() * blocks.width();
        int top = block / blocks.across() * blocks.height();
        int width = Math.min(blocks.width(), header.size().width() - left);
        int height = Math.min(blocks.height(), header.size().height() - top);
        byte[] packed = new byte[(blocks.width() + 7) / 8];
        WritableRaster piece = Raster.createPackedRaster(
                new DataBufferByte(packed, packed.length), blocks.width(), 1, 1, new Point(0, 0));
        Raster wanted = piece.createChild(0, 0, width, 1, 0, 0, null);
        for (int y = top; y < top + height; y++) {
            try {
                rows.next(packed);
            } catch (FaxRows.DamagedRow e) {
                throw file.damaged("its data cannot be unpacked after row " + y + " of "
                        + header.size().height() + " (" + e.getMessage() + ")");
            }
            samples.put(wanted, left, y, sink);
        }
    }
}
