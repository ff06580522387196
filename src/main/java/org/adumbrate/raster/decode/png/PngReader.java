package org.adumbrate.raster.decode.png;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.raster.RasterInfo;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.Samples;
import org.adumbrate.raster.decode.light.PixelLayout;
import org.adumbrate.raster.decode.source.SourceFile;

/** Reads PNG (ISO/IEC 15948) row by row, every colour type and depth, interlaced or not. */
public final class PngReader implements RasterReader {
    private final SourceFile file;
    private final PngHeader header;
    private final RasterInfo info;

    private PngReader(SourceFile file, PngHeader header, RasterInfo info) {
        this.file = file;
        this.header = header;
        this.info = info;
    }

    /**
     * Opens a PNG and reads its head.
     *
     * @throws org.adumbrate.fault.InputFault if the head is damaged or says what is not read
     */
    public static PngReader open(SourceFile file) throws IOException {
        try (PngChunks chunks = new PngChunks(file)) {
            PngHeader header = PngHeader.read(file, chunks);
            PngAncillary said = PngAncillary.read(file, chunks);
            said.readTail();
            PixelLayout layout = PngPixels.of(file, header, said).layout();
            List<String> notes = new ArrayList<>();
            RasterInfo info = new RasterInfo(
                    file.path(),
                    "PNG",
                    header.size(),
                    said.orientation(),
                    layout.type(),
                    layout.decoder(PngColour.of(said, layout.colour(), notes)),
                    said.dpi(),
                    !header.interlaced(),
                    notes);
            return new PngReader(file, header, info);
        }
    }

    @Override
    public RasterInfo info() {
        return info;
    }

    @Override
    public void decode(SampleSink sink) throws IOException {
        PngChunks chunks = new PngChunks(file);
        int longest = (int) header.rowBytes(header.size().width());
        try (PngScanlines rows = new PngScanlines(file, chunks, longest, header.filterStep())) {
            if (!PngHeader.read(file, chunks).equals(header)) {
                throw file.damaged("it was changed while it was read");
            }
            PngPixels pixels = PngPixels.of(file, header, PngAncillary.read(file, chunks));
            if (header.interlaced()) {
                new PngInterlace(header, rows, pixels).decode(sink);
            } else {
                decode(rows, pixels, sink);
            }
            rows.finish();
        }
    }

    private void decode(PngScanlines rows, PngPixels pixels, SampleSink sink) throws IOException {
        int width = header.size().width();
        int rowBytes = (int) header.rowBytes(width);
        for (int y = 0; y < header.size().height(); y++) {
            Samples samples = pixels.unpack(rows.next(rowBytes, y), width);
            sink.put(0, y, width, samples, pixels.offset());
        }
    }

    @Override
    public void close() {
        // Nothing is kept open between decodings.
    }
}
