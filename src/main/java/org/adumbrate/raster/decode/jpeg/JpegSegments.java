package org.adumbrate.raster.decode.jpeg;

import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import org.adumbrate.raster.decode.source.SourceFile;

/** Walks the marker segments of a JPEG up to its first scan (ISO/IEC 10918-1, B.1.1). */
public final class JpegSegments implements Closeable {
    /** Start of scan. */
    public static final int SOS = 0xda;

    /** End of image. */
    public static final int EOI = 0xd9;

    private static final int SOI = 0xd8;
    private static final int TEM = 0x01;
    private static final int RST0 = 0xd0;

    private final SourceFile file;
    private final InputStream in;
    private long position;

    /** Reads a file from its beginning. */
    public JpegSegments(SourceFile file) throws IOException {
        this(file, new BufferedInputStream(Files.newInputStream(file.path()), 1 << 14));
    }

    /** Of a JPEG that lies somewhere within a file, at the beginning of a stream. */
    public JpegSegments(SourceFile file, InputStream in) {
        this.file = file;
        this.in = in;
    }

    /** The marker of the next segment; before its length. */
    public int next() throws IOException {
        while (true) {
            int marker = marker();
            if (marker != SOI && marker != TEM && (marker < RST0 || marker > RST0 + 7)) {
                return marker;
            }
        }
    }

    /** A marker is 0xff, any number of times, and a byte that is neither that nor 0; what lies before it is passed over. */
    private int marker() throws IOException {
        int value = read();
        while (true) {
            while (value != 0xff) {
                value = read();
            }
            while (value == 0xff) {
                value = read();
            }
            if (value != 0) {
                return value;
            }
        }
    }

    /** Where the marker that {@link #next} gave begins. */
    long markerAt() {
        return position - 2;
    }

    /** The body of the segment, without its length. */
    public byte[] body() throws IOException {
        int length = (read() << 8 | read()) - 2;
        if (length < 0) {
            throw file.damaged("a segment of its head is shorter than its own length field");
        }
        byte[] body = in.readNBytes(length);
        position += body.length;
        if (body.length < length) {
            throw file.endsEarly("in its head");
        }
        return body;
    }

    private int read() throws IOException {
        int value = in.read();
        if (value < 0) {
            throw file.endsEarly("in its head");
        }
        position++;
        return value;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
