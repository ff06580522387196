package org.adumbrate.raster.encode;

import java.nio.ByteBuffer;
import java.util.zip.Adler32;

/** Compresses one run of bytes after another into memory; for use by one thread. */
interface Deflating {
    /** The way for a level of effort: 1 goes by runs alone, 2 to 9 are zlib's. */
    static Deflating of(int level) {
        if (level == 1) {
            return new RunDeflate()::compress;
        }
        return new ZlibDeflate(level)::compress;
    }

    /**
     * Compresses a run of bytes to a bare deflate stream (RFC 1951).
     *
     * @param last true if it ends its stream; otherwise it ends at a byte's edge and others may follow
     */
    byte[] compress(byte[] data, int length, boolean last);

    /** Compresses a run of bytes to a stream of its own with zlib's wrapping (RFC 1950). */
    default byte[] wrapped(byte[] data, int length) {
        byte[] bare = compress(data, length, true);
        Adler32 sum = new Adler32();
        sum.update(data, 0, length);
        return ByteBuffer.allocate(bare.length + 6)
                .put((byte) 0x78)
                .put((byte) 0x01)
                .put(bare)
                .putInt((int) sum.getValue())
                .array();
    }
}
