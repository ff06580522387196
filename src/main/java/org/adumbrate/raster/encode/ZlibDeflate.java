package org.adumbrate.raster.encode;

import java.util.Arrays;
import java.util.zip.Deflater;

/** Deflates with zlib, looking for matches as hard as its level says. */
final class ZlibDeflate {
    private final Deflater deflater;
    private byte[] out = new byte[1 << 16];

    ZlibDeflate(int level) {
        this.deflater = new Deflater(level, true);
    }

    byte[] compress(byte[] data, int length, boolean last) {
        deflater.reset();
        deflater.setInput(data, 0, length);
        if (last) {
            deflater.finish();
        }
        int size = 0;
        while (true) {
            int room = out.length - size;
            int got = deflater.deflate(out, size, room, last ? Deflater.NO_FLUSH : Deflater.SYNC_FLUSH);
            size += got;
            if (deflater.finished() || got < room) {
                return Arrays.copyOf(out, size);
            }
            out = Arrays.copyOf(out, 2 * out.length);
        }
    }
}
