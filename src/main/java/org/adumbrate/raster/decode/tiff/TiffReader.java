package org.adumbrate.raster.decode.tiff;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.raster.RasterInfo;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.decode.icc.EmbeddedProfile;
import org.adumbrate.raster.decode.light.Alpha;
import org.adumbrate.raster.decode.light.PixelLayout;
import org.adumbrate.raster.decode.metadata.ExifBlock;
import org.adumbrate.raster.decode.metadata.TiffFields;
import org.adumbrate.raster.decode.metadata.TiffTag;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * Reads TIFF and BigTIFF: strips and tiles, interleaved and planar, whole and floating-point numbers. The directory is
 * read and judged here; unpacking is left to the image library.
 */
public final class TiffReader implements RasterReader {
    private final SourceFile file;
    private final TiffHeader header;
    private final ByteBuffer head;
    private final TiffPixels pixels;
    private final Optional<FaxDecoding> fax;
    private final RasterInfo info;

    private TiffReader(
            SourceFile file,
            TiffHeader header,
            ByteBuffer head,
            TiffPixels pixels,
            Optional<FaxDecoding> fax,
            RasterInfo info) {
        this.file = file;
        this.header = header;
        this.head = head;
        this.pixels = pixels;
        this.fax = fax;
        this.info = info;
    }

    /**
     * Opens a TIFF and reads its head.
     *
     * @throws org.adumbrate.fault.InputFault if the head is damaged or says what is not read
     */
    public static TiffReader open(SourceFile file) throws IOException {
        TiffFields fields = TiffFields.read(file);
        TiffHeader header = TiffHeaderReader.read(file, fields);
        TiffPixels pixels = TiffPixels.of(file, fields, header);
        List<String> notes = new ArrayList<>();
        ExifBlock shown = ExifBlock.of(fields);
        if (header.alpha() != Alpha.NONE && !fields.has(TiffTag.EXTRA_SAMPLES)) {
            notes.add("does not say what its fourth channel is; it is taken for transparency");
        }
        PixelLayout layout = pixels.layout();
        RasterInfo info = new RasterInfo(
                file.path(),
                "TIFF",
                header.size(),
                shown.orientation(),
                layout.type(),
                layout.decoder(profile(fields).colorimetry(layout.colour(), notes)),
                shown.dpi(),
                pixels.inOrder(),
                notes);
        Optional<FaxDecoding> fax = Optional.empty();
        if (header.compression() == TiffCompression.FAX) {
            fax = Optional.of(new FaxDecoding(file, header, FaxDecoding.FaxStrips.of(fields, header.blocks()), pixels));
        }
        return new TiffReader(file, header, TiffHead.build(fields, header.blocks()), pixels, fax, info);
    }

    private static EmbeddedProfile profile(TiffFields fields) {
        return fields.has(TiffTag.ICC_PROFILE)
                ? EmbeddedProfile.of(fields.bytes(TiffTag.ICC_PROFILE))
                : EmbeddedProfile.NONE;
    }

    @Override
    public RasterInfo info() {
        return info;
    }

    @Override
    public void decode(SampleSink sink) throws IOException {
        if (fax.isPresent()) {
            fax.get().run(sink);
        } else {
            new TiffDecoding(file, header, head, pixels, sink).run();
        }
    }

    @Override
    public void close() {
        // Nothing is kept open between decodings.
    }
}
