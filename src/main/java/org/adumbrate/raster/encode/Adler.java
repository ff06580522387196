package org.adumbrate.raster.encode;

/** Joins Adler-32 checksums (RFC 1950, section 8.2) of pieces into that of the whole. */
final class Adler {
    private static final int BASE = 65521;

    private Adler() {}

    /**
     * The checksum of two pieces one after the other. With A = 1 + sum of bytes and B = sum of all A, the second piece's
     * A grows by what the first summed up to, and its B by that for every byte.
     *
     * @param first checksum of the first piece
     * @param second checksum of the second piece
     * @param secondLength bytes of the second piece
     */
    static int joined(int first, int second, long secondLength) {
        long a1 = first & 0xffffL;
        long b1 = (first & 0xffffffffL) >>> 16;
        long a2 = second & 0xffffL;
        long b2 = (second & 0xffffffffL) >>> 16;
        long a = (a1 + a2 + BASE - 1) % BASE;
        long b = (b1 + b2 + secondLength % BASE * (a1 + BASE - 1)) % BASE;
        return (int) (b << 16 | a);
    }
}
