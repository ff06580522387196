package org.adumbrate.raster.decode.netpbm;

import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import org.adumbrate.raster.Orientation;
import org.adumbrate.raster.RasterInfo;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.decode.light.Colorimetry;
import org.adumbrate.raster.decode.light.PixelLayout;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * Reads portable bitmaps, graymaps and pixmaps (P1 to P6) and arbitrary maps (P7) row by row; of several pictures in a file
 * the first. Values are taken as encoded sRGB, as nearly all writers mean them.
 */
public final class PnmReader implements RasterReader {
    private final SourceFile file;
    private final PnmHead head;
    private final RasterInfo info;

    private PnmReader(SourceFile file, PnmHead head, RasterInfo info) {
        this.file = file;
        this.head = head;
        this.info = info;
    }

    /**
     * Opens a PNM or PAM file and reads its head.
     *
     * @throws org.adumbrate.fault.InputFault if the head is damaged or says what is not read
     */
    public static PnmReader open(SourceFile file) throws IOException {
        PnmHead head = PnmHead.read(file);
        PixelLayout layout = head.layout();
        RasterInfo info = new RasterInfo(
                file.path(),
                head.format(),
                head.size(),
                Orientation.TOP_LEFT,
                layout.type(),
                layout.decoder(Colorimetry.untagged(layout.colour())),
                OptionalDouble.empty(),
                true,
                List.of());
        return new PnmReader(file, head, info);
    }

    @Override
    public RasterInfo info() {
        return info;
    }

    @Override
    public void decode(SampleSink sink) throws IOException {
        int width = head.size().width();
        try (PnmRows rows = new PnmRows(file, head)) {
            for (int y = 0; y < head.size().height(); y++) {
                sink.put(0, y, width, rows.next(), 0);
            }
        }
    }

    @Override
    public void close() {
        // Nothing is kept open between decodings.
    }
}
