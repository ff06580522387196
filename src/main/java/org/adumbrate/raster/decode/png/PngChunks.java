package org.adumbrate.raster.decode.png;

import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.zip.CRC32;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * Walks the chunks of a PNG (ISO/IEC 15948, clause 5.3): length, four letters, body, CRC-32. The CRC of every body read to
 * its end is checked.
 */
final class PngChunks implements Closeable {
    private static final int SIGNATURE = 8;

    private final SourceFile file;
    private final InputStream in;
    private final CRC32 crc = new CRC32();
    private long position = SIGNATURE;
    private String type = "";
    private int left;
    private boolean checked;

    /** Stands before the first chunk. */
    PngChunks(SourceFile file) throws IOException {
        this.file = file;
        this.in = new BufferedInputStream(Files.newInputStream(file.path()), 1 << 16);
        in.skipNBytes(SIGNATURE);
    }

    /** Enters the next chunk; the one before must have been read or skipped. */
    void next() throws IOException {
        byte[] head = new byte[8];
        if (file.bytes() - position < head.length || in.readNBytes(head, 0, 8) < 8) {
            throw file.endsEarly("after its chunk " + type);
        }
        position += head.length;
        type = new String(head, 4, 4, StandardCharsets.ISO_8859_1);
        if (!type.matches("[A-Za-z]{4}")) {
            throw file.damaged("a chunk without a name follows after byte " + (position - head.length));
        }
        left = ByteBuffer.wrap(head).getInt();
        if (left < 0 || left > file.bytes() - position) {
            throw file.endsEarly("within its chunk " + type);
        }
        checked = false;
        crc.reset();
        crc.update(head, 4, 4);
    }

    /** The letters of the chunk entered last. */
    String type() {
        return type;
    }

    /** Bytes of the body not yet read. */
    int left() {
        return left;
    }

    /** Where in the file the chunk entered last begins; its body must not have been read yet. */
    long at() {
        return position - 8;
    }

    /** Reads some of the body; 0 at its end, once its CRC has been found right. */
    int read(byte[] into) throws IOException {
        if (left == 0) {
            if (!checked) {
                checkCrc();
            }
            return 0;
        }
        int count = in.read(into, 0, Math.min(left, into.length));
        if (count < 0) {
            throw file.endsEarly("within its chunk " + type);
        }
        crc.update(into, 0, count);
        left -= count;
        position += count;
        if (left == 0) {
            checkCrc();
        }
        return count;
    }

    /** The whole body. */
    byte[] body() throws IOException {
        byte[] body = in.readNBytes(left);
        crc.update(body);
        position += body.length;
        if (body.length < left) {
            throw file.endsEarly("within its chunk " + type);
        }
        left = 0;
        checkCrc();
        return body;
    }

    /** Passes over the rest of the body, unchecked. */
    void skip() throws IOException {
        long rest = left + 4L;
        if (rest > file.bytes() - position) {
            throw file.endsEarly("within its chunk " + type);
        }
        in.skipNBytes(rest);
        position += rest;
        left = 0;
        checked = true;
    }

    private void checkCrc() throws IOException {
        checked = true;
        byte[] stored = in.readNBytes(4);
        position += stored.length;
        if (stored.length < 4) {
            throw file.endsEarly("within its chunk " + type);
        }
        if (ByteBuffer.wrap(stored).getInt() != (int) crc.getValue()) {
            throw file.damaged("the checksum of its chunk " + type + " is wrong");
        }
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
