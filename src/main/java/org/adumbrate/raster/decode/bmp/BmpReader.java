package org.adumbrate.raster.decode.bmp;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.raster.Orientation;
import org.adumbrate.raster.RasterInfo;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.decode.light.PixelLayout;
import org.adumbrate.raster.decode.source.SourceFile;

/** Reads BMP of every depth, plain or in runs. Rows come from the top down, but for runs, which are packed from the bottom up. */
public final class BmpReader implements RasterReader {
    /** What is read of a file at a time, at least a row. */
    private static final int CHUNK = 1 << 18;

    private final SourceFile file;
    private final BmpHead head;
    private final RasterInfo info;

    private BmpReader(SourceFile file, BmpHead head, RasterInfo info) {
        this.file = file;
        this.head = head;
        this.info = info;
    }

    /**
     * Opens a BMP and reads its head.
     *
     * @throws org.adumbrate.fault.InputFault if the head is damaged or says what is not read
     */
    public static BmpReader open(SourceFile file) throws IOException {
        BmpHead head = BmpHead.read(file);
        PixelLayout layout = new BmpPixels(file, head).layout();
        List<String> notes = new ArrayList<>();
        RasterInfo info = new RasterInfo(
                file.path(),
                "BMP",
                head.size(),
                Orientation.TOP_LEFT,
                layout.type(),
                layout.decoder(head.profile().colorimetry(layout.colour(), notes)),
                head.dpi(),
                head.packing() == BmpHead.Packing.PLAIN,
                notes);
        return new BmpReader(file, head, info);
    }

    @Override
    public RasterInfo info() {
        return info;
    }

    @Override
    public void decode(SampleSink sink) throws IOException {
        if (head.packing() == BmpHead.Packing.PLAIN) {
            decodePlain(sink);
        } else {
            decodeRuns(sink);
        }
    }

    /** In bands of rows, the upper band first, wherever it stands in the file. */
    private void decodePlain(SampleSink sink) throws IOException {
        BmpPixels pixels = new BmpPixels(file, head);
        int rowBytes = head.rowBytes();
        int height = head.size().height();
        int bandRows = Math.min(height, Math.max(1, CHUNK / rowBytes));
        byte[] band = new byte[Math.multiplyExact(bandRows, rowBytes)];
        byte[] row = new byte[rowBytes];
        try (RandomAccessFile in = new RandomAccessFile(file.path().toFile(), "r")) {
            for (int top = 0; top < height; top += bandRows) {
                int rows = Math.min(bandRows, height - top);
                long first = head.topDown() ? top : (long) height - top - rows;
                in.seek(head.pixelsAt() + first * rowBytes);
                in.readFully(band, 0, rows * rowBytes);
                for (int k = 0; k < rows; k++) {
                    int at = head.topDown() ? k : rows - 1 - k;
                    System.arraycopy(band, at * rowBytes, row, 0, rowBytes);
                    sink.put(0, top + k, head.size().width(), pixels.unpack(row, top + k), 0);
                }
            }
        }
    }

    private void decodeRuns(SampleSink sink) throws IOException {
        BmpPixels pixels = new BmpPixels(file, head);
        byte[] row = new byte[head.rowBytes()];
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file.path()), 1 << 16)) {
            in.skipNBytes(Math.min(file.bytes(), head.pixelsAt()));
            BmpRuns runs = new BmpRuns(file, head, in);
            int height = head.size().height();
            for (int k = 0; k < height; k++) {
                runs.next(row);
                int y = head.topDown() ? k : height - 1 - k;
                sink.put(0, y, head.size().width(), pixels.unpack(row, y), 0);
            }
        }
    }

    @Override
    public void close() {
        // Nothing is kept open between decodings.
    }
}
