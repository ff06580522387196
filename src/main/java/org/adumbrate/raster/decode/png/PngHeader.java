package org.adumbrate.raster.decode.png;

import java.io.IOException;
import java.nio.ByteBuffer;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * The IHDR of a PNG (ISO/IEC 15948, clause 11.2.2).
 *
 * @param size its size
 * @param depth bits a sample: 1, 2, 4, 8 or 16
 * @param kind what a pixel holds
 * @param interlaced whether it comes in seven passes
 */
record PngHeader(PixelSize size, int depth, Kind kind, boolean interlaced) {
    /** Deflate makes at most 1032 bytes of one (RFC 1951: 258 bytes of a match in two bits). */
    private static final long LARGEST_RATIO = 1032;

    /** The colour types and the depths that each allows. */
    enum Kind {
        GREY(0, 1, 1 | 2 | 4 | 8 | 16),
        RGB(2, 3, 8 | 16),
        PALETTE(3, 1, 1 | 2 | 4 | 8),
        GREY_ALPHA(4, 2, 8 | 16),
        RGB_ALPHA(6, 4, 8 | 16);

        private final int code;
        private final int samples;
        private final int depths;

        Kind(int code, int samples, int depths) {
            this.code = code;
            this.samples = samples;
            this.depths = depths;
        }

        /** Whether one colour of it may be declared transparent. */
        boolean mayBeKeyed() {
            return this == GREY || this == RGB;
        }

        private boolean allows(int depth) {
            return Integer.bitCount(depth) == 1 && (depths & depth) != 0;
        }
    }

    /** Reads the first chunk. */
    static PngHeader read(SourceFile file, PngChunks chunks) throws IOException {
        chunks.next();
        if (!chunks.type().equals("IHDR") || chunks.left() != 13) {
            throw file.damaged("it does not begin with an image header");
        }
        ByteBuffer body = ByteBuffer.wrap(chunks.body());
        PixelSize size = file.checkedSize(body.getInt() & 0xffffffffL, body.getInt() & 0xffffffffL);
        int depth = body.get();
        int code = body.get();
        int compression = body.get();
        int filter = body.get();
        int interlace = body.get();
        if (compression != 0 || filter != 0 || interlace < 0 || interlace > 1) {
            throw file.damaged("its image header names methods that PNG does not have");
        }
        PngHeader header = new PngHeader(size, depth, kind(file, code, depth), interlace == 1);
        file.requireBytes(size, header.rowBytes(size.width()) * size.height() / LARGEST_RATIO);
        return header;
    }

    private static Kind kind(SourceFile file, int code, int depth) throws IOException {
        for (Kind kind : Kind.values()) {
            if (kind.code == code && kind.allows(depth)) {
                return kind;
            }
        }
        throw file.damaged("its image header pairs colour type " + code + " with " + depth + " bits");
    }

    /** The type in which its samples are delivered. */
    SampleType type() {
        return depth == 16 ? SampleType.SHORT : SampleType.BYTE;
    }

    /** Bytes of a row of so many pixels, before filtering. */
    long rowBytes(int pixels) {
        return ((long) pixels * kind.samples * depth + 7) / 8;
    }

    /** The distance in bytes to the corresponding byte of the pixel before, at least 1. */
    int filterStep() {
        return Math.max(1, kind.samples * depth / 8);
    }
}
