package org.adumbrate.raster.decode.tiff;

import com.twelvemonkeys.imageio.plugins.tiff.TIFFImageReaderSpi;
import java.awt.image.Raster;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.decode.jpeg.JpegDecoding;
import org.adumbrate.raster.decode.library.GuardedSink;
import org.adumbrate.raster.decode.library.SinkImage;
import org.adumbrate.raster.decode.library.SinkRaster;
import org.adumbrate.raster.decode.library.SplicedInput;
import org.adumbrate.raster.decode.source.SourceFile;

/** One decoding of a TIFF: the library unpacks and writes pieces of rows into a picture that has no memory. */
final class TiffDecoding {
    private final SourceFile file;
    private final TiffHeader header;
    private final ByteBuffer head;
    private final TiffPixels pixels;
    private final GuardedSink sink;
    private int rows;
    private boolean corrupt;

    TiffDecoding(SourceFile file, TiffHeader header, ByteBuffer head, TiffPixels pixels, SampleSink sink) {
        this.file = file;
        this.header = header;
        this.head = head;
        this.pixels = pixels;
        this.sink = new GuardedSink(sink);
    }

    void run() throws IOException {
        ImageReader reader = new TIFFImageReaderSpi().createReaderInstance();
        try (SplicedInput input = new SplicedInput(head, file, 0)) {
            reader.setInput(input, true, true);
            reader.addIIOReadWarningListener((source, warning) -> corrupt |= JpegDecoding.meansCorruption(warning));
            read(reader);
            if (corrupt) {
                throw file.damaged("its data make no sense " + where());
            }
        } catch (InputFault e) {
            throw e;
        } catch (EOFException e) {
            sink.rethrow();
            throw file.damaged("its data run out " + where(), e);
        } catch (IOException | RuntimeException e) {
            sink.rethrow();
            throw file.damaged("its data cannot be unpacked " + where(), e);
        } finally {
            reader.dispose();
        }
    }

    private String where() {
        return "after row " + rows + " of " + header.size().height();
    }

    private void read(ImageReader reader) throws IOException {
        ImageReadParam parameters = reader.getDefaultReadParam();
        if (pixels.bandHeight() == 0) {
            PieceSamples samples = pixels.samples().get();
            parameters.setDestination(destination(reader, (x, y, piece, band) -> take(samples, x, y, piece, sink)));
            reader.readRaster(0, parameters);
            return;
        }
        RowBand rowBand = new RowBand(
                sink,
                header.size().width(),
                pixels.layout().channels(),
                pixels.bandHeight(),
                pixels.layout().type());
        PieceSamples samples = pixels.samples().get();
        parameters.setDestination(destination(reader, (x, y, piece, band) -> {
            if (!header.planar()) {
                take(samples, x, y, piece, rowBand);
            } else if (band < pixels.layout().channels()) {
                take(samples, x, y, piece, rowBand.channel(band));
            }
        }));
        reader.readRaster(0, parameters);
        rowBand.finish();
    }

    private void take(PieceSamples samples, int x, int y, Raster piece, SampleSink to) {
        if (corrupt) {
            throw new IllegalStateException("the data before row " + y + " are damaged");
        }
        rows = Math.max(rows, y);
        samples.put(piece, x, y, to);
    }

    /** Shaped as the library itself would have it. */
    private SinkImage destination(ImageReader reader, SinkRaster.PieceSink pieces) throws IOException {
        ImageTypeSpecifier raw = reader.getRawImageType(0);
        return SinkImage.of(
                raw.getColorModel(),
                raw.getSampleModel(header.size().width(), header.size().height()),
                pieces);
    }
}
