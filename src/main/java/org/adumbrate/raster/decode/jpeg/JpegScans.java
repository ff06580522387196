package org.adumbrate.raster.decode.jpeg;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.decode.source.SourceFile;

/** Counts the scans of a JPEG without decoding them. */
final class JpegScans implements Closeable {
    private static final int EOI = 0xd9;
    private static final int RST0 = 0xd0;
    private static final int END = -1;

    private final InputStream in;
    private final byte[] buffer = new byte[1 << 16];
    private int at;
    private int limit;

    private JpegScans(SourceFile file, long from) throws IOException {
        this.in = Files.newInputStream(file.path());
        in.skipNBytes(from);
    }

    /**
     * The number of scans.
     *
     * @param scanAt where the first one's segment begins
     * @throws InputFault if the file stops before the end of the image
     */
    static int count(SourceFile file, long scanAt) throws IOException {
        try (JpegScans scans = new JpegScans(file, scanAt)) {
            int count = 0;
            int marker = scans.nextSegment();
            while (marker != END && marker != EOI) {
                count += marker == JpegSegments.SOS ? 1 : 0;
                scans.skipSegment();
                marker = scans.nextSegment();
            }
            if (marker == END) {
                throw file.endsEarly("in scan " + count + " of a progressive picture");
            }
            return count;
        }
    }

    /** Passes over entropy-coded data, in which 0xff is always followed by 0 or a restart marker. */
    private int nextSegment() throws IOException {
        int previous = 0;
        int value = read();
        while (value != END) {
            boolean restart = value >= RST0 && value <= RST0 + 7;
            if (previous == 0xff && value != 0 && value != 0xff && !restart) {
                return value;
            }
            previous = value;
            value = read();
        }
        return END;
    }

    private void skipSegment() throws IOException {
        int length = read() << 8 | read();
        for (int i = 2; i < length && read() != END; i++) {
            // The body is of no interest.
        }
    }

    private int read() throws IOException {
        if (at == limit) {
            limit = Math.max(0, in.read(buffer));
            at = 0;
        }
        return limit == 0 ? END : buffer[at++] & 0xff;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
