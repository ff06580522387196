package org.adumbrate.raster.encode;

/** The compressed bytes of a strip, and what a stream that it becomes part of must know of it. */
final class PackedStrip implements StripEncoder.Packed {
    private final byte[] data;
    private final int checksum;
    private final long length;

    /**
     * @param data compressed
     * @param checksum Adler-32 of the strip before compression
     * @param length bytes of the strip before compression
     */
    PackedStrip(byte[] data, int checksum, long length) {
        this.data = data;
        this.checksum = checksum;
        this.length = length;
    }

    byte[] data() {
        return data;
    }

    int checksum() {
        return checksum;
    }

    long length() {
        return length;
    }
}
