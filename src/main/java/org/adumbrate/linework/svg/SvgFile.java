package org.adumbrate.linework.svg;

import java.io.BufferedInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import org.adumbrate.linework.clip.TooIntricateException;

/** Opens SVG files, plain or packed by gzip as {@code .svgz} is (RFC 1952; SVG 2, appendix "Conformance Criteria"). */
public final class SvgFile {
    /** Of what is unpacked; a drawing of half a million lines has some 60 million. */
    private static final long MOST_BYTES = 400_000_000;

    private static final int BUFFER = 1 << 16;

    private SvgFile() {}

    /** Whether a file that begins with these bytes is packed, whatever its name says. */
    public static boolean isPacked(byte[] head) {
        return head.length > 2 && (head[0] & 0xff) == 0x1f && (head[1] & 0xff) == 0x8b && head[2] == 8;
    }

    /**
     * Opens a file, and unpacks it if it is packed.
     *
     * @return a stream that throws {@link TooIntricateException} if more is unpacked than any drawing has
     * @throws IOException if it cannot be read
     */
    public static InputStream open(Path file) throws IOException {
        BufferedInputStream in = new BufferedInputStream(Files.newInputStream(file), BUFFER);
        try {
            in.mark(3);
            byte[] head = in.readNBytes(3);
            in.reset();
            return isPacked(head) ? new Bounded(new GZIPInputStream(in, BUFFER)) : in;
        } catch (IOException e) {
            in.close();
            throw e;
        }
    }

    private static final class Bounded extends FilterInputStream {
        private long left = MOST_BYTES;

        Bounded(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int read = super.read();
            take(read < 0 ? 0 : 1);
            return read;
        }

        @Override
        public int read(byte[] bytes, int from, int length) throws IOException {
            int read = super.read(bytes, from, length);
            take(Math.max(0, read));
            return read;
        }

        private void take(int bytes) {
            left -= bytes;
            if (left < 0) {
                throw new TooIntricateException("unpacks to more than " + MOST_BYTES + " bytes");
            }
        }
    }
}
