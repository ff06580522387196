package org.adumbrate.raster.decode.jpeg;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.raster.RasterInfo;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.decode.light.Alpha;
import org.adumbrate.raster.decode.light.ColourModel;
import org.adumbrate.raster.decode.light.PixelLayout;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * Reads JPEG, baseline and progressive, grey, colour and ink. The head is read here; the entropy-coded data goes to the
 * image library behind a head that leaves it nothing to guess and no profile to apply.
 */
public final class JpegReader implements RasterReader {
    private final SourceFile file;
    private final JpegHeader header;
    private final RasterInfo info;

    private JpegReader(SourceFile file, JpegHeader header, RasterInfo info) {
        this.file = file;
        this.header = header;
        this.info = info;
    }

    /**
     * Opens a JPEG and reads its head.
     *
     * @throws org.adumbrate.fault.InputFault if the head is damaged or says what is not read
     */
    public static JpegReader open(SourceFile file) throws IOException {
        JpegHeader header = JpegHeaderReader.read(file);
        ColourModel model = header.colour().model();
        PixelLayout layout = new PixelLayout(model, Alpha.NONE, SampleType.BYTE);
        List<String> notes = new ArrayList<>();
        RasterInfo info = new RasterInfo(
                file.path(),
                "JPEG",
                header.size(),
                header.exif().orientation(),
                layout.type(),
                layout.decoder(header.profile().colorimetry(model, notes)),
                header.dpi(),
                true,
                notes);
        return new JpegReader(file, header, info);
    }

    @Override
    public RasterInfo info() {
        return info;
    }

    @Override
    public void decode(SampleSink sink) throws IOException {
        new JpegDecoding(file, header, sink).run();
    }

    @Override
    public void close() {
        // Nothing is kept open between decodings.
    }
}
