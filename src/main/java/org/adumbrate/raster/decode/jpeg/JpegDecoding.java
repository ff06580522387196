package org.adumbrate.raster.decode.jpeg;

import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.io.IOException;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.Samples;
import org.adumbrate.raster.decode.library.GuardedSink;
import org.adumbrate.raster.decode.library.SinkImage;
import org.adumbrate.raster.decode.library.SplicedInput;
import org.adumbrate.raster.decode.light.ColourModel;
import org.adumbrate.raster.decode.source.SourceFile;

/** One decoding of a JPEG: rows go from the library's native code to the sink, one by one. */
public final class JpegDecoding {
    private final SourceFile file;
    private final JpegHeader header;
    private final GuardedSink sink;
    private final boolean flipsInk;
    private int passes = 1;
    private int pass;
    private int rows;
    private boolean corrupt;

    JpegDecoding(SourceFile file, JpegHeader header, SampleSink sink) {
        this.file = file;
        this.header = header;
        this.sink = new GuardedSink(sink);
        // The platform takes ink to be stored inverted, as writers of the Adobe segment do.
        this.flipsInk = isInk() && !header.inverted();
    }

    private boolean isInk() {
        return header.colour().model() == ColourModel.CMYK;
    }

    void run() throws IOException {
        ImageReader reader = PlatformJpeg.reader();
        try (SplicedInput input = new SplicedInput(header.head(), file, header.scanAt())) {
            reader.setInput(input, true, true);
            reader.addIIOReadWarningListener((source, warning) -> corrupt |= meansCorruption(warning));
            read(reader, input);
        } finally {
            reader.dispose();
        }
    }

    private void read(ImageReader reader, SplicedInput input) throws IOException {
        ImageReadParam parameters = parameters(reader);
        try {
            reader.read(0, parameters);
        } catch (IOException | RuntimeException e) {
            sink.rethrow();
            throw fault(input, e);
        }
        if (corrupt || rows < header.size().height()) {
            throw fault(input, null);
        }
    }

    /**
     * What the library is to read into. Of a progressive picture it gives all rows anew after each scan; its own parameter
     * for choosing one pass leaves the later refinements out, so the passes are counted here.
     */
    private ImageReadParam parameters(ImageReader reader) throws IOException {
        boolean progressive = header.frame().progressive();
        if (progressive || !header.interleaved()) {
            int scans = JpegScans.count(file, header.scanAt());
            header.frame().requireScannable(file, scans);
            passes = progressive ? scans : 1;
        }
        ImageReadParam parameters = reader.getDefaultReadParam();
        parameters.setDestination(
                SinkImage.ofBytes(header.size(), header.colour().model(), this::take));
        return parameters;
    }

    /**
     * Takes a row of the last pass, unless the data it was made from were found damaged: what the library makes up then is
     * no picture.
     */
    private void take(int x, int y, Raster piece, int band) {
        if (corrupt) {
            throw new IllegalStateException("the data before row " + y + " are damaged");
        }
        pass += y == 0 ? 1 : 0;
        if (pass < passes) {
            return;
        }
        byte[] row = ((DataBufferByte) piece.getDataBuffer()).getData();
        if (flipsInk) {
            for (int i = 0; i < row.length; i++) {
                row[i] = (byte) ~row[i];
            }
        }
        rows++;
        sink.put(x, y, piece.getWidth(), new Samples.Bytes(row), 0);
    }

    /** The library's own words for data that cannot be right; stray bytes between segments do no harm. */
    public static boolean meansCorruption(String warning) {
        return (warning.startsWith("Corrupt JPEG data") && !warning.contains("extraneous"))
                || warning.startsWith("Inconsistent progression");
    }

    private InputFault fault(SplicedInput input, Exception cause) {
        String where = "after row " + rows + " of " + header.size().height();
        if (input.ranOut()) {
            return file.endsEarly(where);
        }
        return file.damaged("its image data make no sense " + where, cause);
    }
}
