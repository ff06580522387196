package org.adumbrate.raster.decode.tiff;

import java.io.IOException;
import java.util.Arrays;
import java.util.function.Supplier;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.decode.light.PixelLayout;
import org.adumbrate.raster.decode.metadata.TiffFields;
import org.adumbrate.raster.decode.source.SourceFile;
import org.adumbrate.raster.decode.tiff.TiffHeader.Photometric;

/**
 * How the pieces of a TIFF become rows of samples.
 *
 * @param layout of a pixel as delivered
 * @param samples makes a converter of pieces: of all channels, or of one if they are stored apart
 * @param bandHeight rows to be gathered before any is passed on; 0 if pieces go on as they come
 * @param inOrder whether whole rows come out in order
 */
record TiffPixels(PixelLayout layout, Supplier<PieceSamples> samples, int bandHeight, boolean inOrder) {
    /** Tiles that would take more than this part of the heap side by side are passed on one by one. */
    private static final int PART_FOR_TILES = 8;

    /** Channels that lie further apart than this part of the heap cannot be brought together. */
    private static final int PART_FOR_PLANES = 2;

    static TiffPixels of(SourceFile file, TiffFields fields, TiffHeader header) throws IOException {
        if (header.photometric() == Photometric.PALETTE) {
            TiffPalette palette = TiffPalette.read(file, fields, header.bits());
            return gathered(
                    file,
                    header,
                    palette.layout(),
                    () -> new PaletteSamples(palette.layout(), palette.entries(), palette.count()));
        }
        PixelLayout layout = new PixelLayout(header.photometric().model(), header.alpha(), header.type());
        int together = header.planar() ? 1 : layout.channels();
        boolean inverted = header.photometric() == Photometric.WHITE_IS_ZERO;
        long[] most = new long[together];
        Arrays.fill(most, (1L << header.bits()) - 1);
        Supplier<PieceSamples> samples = header.floating()
                ? () -> new RealSamples(together, header.swapsFloats(), inverted)
                : () -> new WholeSamples(layout.type(), most, inverted);
        return gathered(file, header, layout, samples);
    }

    private static TiffPixels gathered(
            SourceFile file, TiffHeader header, PixelLayout layout, Supplier<PieceSamples> samples) throws InputFault {
        TiffBlocks blocks = header.blocks();
        boolean wholeRows = blocks.across() == 1;
        if (wholeRows && !header.planar()) {
            return new TiffPixels(layout, samples, 0, true);
        }
        int height = Math.min(blocks.height(), header.size().height());
        long bytes = RowBand.bytes(header.size().width(), layout.channels(), height, layout.type());
        long heap = Runtime.getRuntime().maxMemory();
        if (header.planar() && (bytes > heap / PART_FOR_PLANES || bytes > Integer.MAX_VALUE)) {
            throw new InputFault(
                    file.path(),
                    "stores its channels " + (bytes >> 20) + " MB apart, more than memory allows to bring together",
                    "save it with interleaved channels");
        }
        boolean gather = header.planar() || bytes <= heap / PART_FOR_TILES;
        return new TiffPixels(layout, samples, gather ? height : 0, gather);
    }
}
