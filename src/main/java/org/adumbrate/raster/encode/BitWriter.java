package org.adumbrate.raster.encode;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;

/** Writes bits into bytes, the lowest bit first, as RFC 1951 section 3.1.1 packs them. */
final class BitWriter {
    private byte[] bytes;
    private ByteBuffer view;
    private int size;
    private long pending;
    private int pendingBits;

    BitWriter() {
        grow(1 << 16);
    }

    private void grow(int length) {
        bytes = bytes == null ? new byte[length] : Arrays.copyOf(bytes, length);
        view = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    /** Begins anew. */
    void reset() {
        size = 0;
        pending = 0;
        pendingBits = 0;
    }

    /** Makes sure that so many more bits fit. */
    void reserve(long bits) {
        long needed = size + (bits >>> 3) + 32;
        if (needed > bytes.length) {
            grow(Math.toIntExact(Math.max(needed, 2L * bytes.length)));
        }
    }

    /** Writes up to 32 bits, for which room was reserved; those above {@code count} must be 0. */
    void put(int bits, int count) {
        pending |= (bits & 0xffffffffL) << pendingBits;
        pendingBits += count;
        view.putLong(size, pending);
        int whole = pendingBits >>> 3;
        size += whole;
        pending >>>= whole << 3;
        pendingBits &= 7;
    }

    /** Fills up the last byte with zeros. */
    void align() {
        if (pendingBits > 0) {
            put(0, 8 - pendingBits);
        }
    }

    /** Everything up to the last whole byte. */
    byte[] bytes() {
        return Arrays.copyOf(bytes, size);
    }
}
