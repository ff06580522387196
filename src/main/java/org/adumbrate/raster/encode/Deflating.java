package org.adumbrate.raster.encode;

import java.util.Arrays;
import java.util.zip.Deflater;

/** Compresses one run of bytes after another into memory; for use by one thread. */
final class Deflating {
    private final Deflater deflater;
    private byte[] out = new byte[1 << 16];

    /**
     * @param level 1 to 9
     * @param bare true for a bare deflate stream (RFC 1951), false for one with zlib's wrapping (RFC 1950)
     */
    Deflating(int level, boolean bare) {
        this.deflater = new Deflater(level, bare);
    }

    /** Compresses a run that ends its stream. */
    byte[] whole(byte[] data, int length) {
        deflater.reset();
        deflater.setInput(data, 0, length);
        deflater.finish();
        return drained(Deflater.NO_FLUSH);
    }

    /** Compresses a run that others will follow, up to a byte's edge (a sync flush, RFC 1951 3.2.4). */
    byte[] piece(byte[] data, int length) {
        deflater.reset();
        deflater.setInput(data, 0, length);
        return drained(Deflater.SYNC_FLUSH);
    }

    private byte[] drained(int flush) {
        int size = 0;
        while (true) {
            int room = out.length - size;
            int got = deflater.deflate(out, size, room, flush);
            size += got;
            if (deflater.finished() || got < room) {
                return Arrays.copyOf(out, size);
            }
            out = Arrays.copyOf(out, 2 * out.length);
        }
    }
}
