package org.adumbrate.raster.decode.radiance;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.List;
import java.util.OptionalDouble;
import org.adumbrate.raster.Orientation;
import org.adumbrate.raster.RasterInfo;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.Samples;
import org.adumbrate.raster.decode.light.Alpha;
import org.adumbrate.raster.decode.light.Colorimetry;
import org.adumbrate.raster.decode.light.ColourModel;
import org.adumbrate.raster.decode.light.PixelLayout;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * Reads Radiance HDR, every kind of run. Its values are light as they stand; the exposure that a head may state is taken to
 * have been chosen for viewing.
 */
public final class HdrReader implements RasterReader {
    private final SourceFile file;
    private final HdrHeader header;
    private final RasterInfo info;

    private HdrReader(SourceFile file, HdrHeader header, RasterInfo info) {
        this.file = file;
        this.header = header;
        this.info = info;
    }

    /**
     * Opens a Radiance HDR picture and reads its head.
     *
     * @throws org.adumbrate.fault.InputFault if the head is damaged or says what is not read
     */
    public static HdrReader open(SourceFile file) throws IOException {
        HdrHeader header = HdrHeader.read(file);
        PixelLayout layout = new PixelLayout(ColourModel.RGB, Alpha.NONE, SampleType.FLOAT);
        RasterInfo info = new RasterInfo(
                file.path(),
                "HDR",
                header.size(),
                Orientation.TOP_LEFT,
                layout.type(),
                layout.decoder(Colorimetry.untagged(layout.colour())),
                OptionalDouble.empty(),
                true,
                List.of());
        return new HdrReader(file, header, info);
    }

    @Override
    public RasterInfo info() {
        return info;
    }

    @Override
    public void decode(SampleSink sink) throws IOException {
        int width = header.size().width();
        float[] row = new float[3 * width];
        Samples samples = new Samples.Floats(row);
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file.path()), 1 << 16)) {
            in.skipNBytes(header.length());
            HdrScanlines scanlines = new HdrScanlines(file, in, header.size());
            for (int y = 0; y < header.size().height(); y++) {
                scanlines.next(row);
                sink.put(0, y, width, samples, 0);
            }
        }
    }

    @Override
    public void close() {
        // Nothing is kept open between decodings.
    }
}
