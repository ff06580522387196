package org.adumbrate.raster.encode;

import java.io.DataInputStream;
import java.io.DataOutput;
import java.io.EOFException;
import java.io.IOException;

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

    static PackedStrip read(DataInputStream in) throws IOException {
        int checksum = in.readInt();
        long length = in.readLong();
        int count = in.readInt();
        byte[] data = in.readNBytes(count);
        if (data.length < count) {
            throw new EOFException("cut off in a strip");
        }
        return new PackedStrip(data, checksum, length);
    }

    @Override
    public void writeTo(DataOutput out) throws IOException {
        out.writeInt(checksum);
        out.writeLong(length);
        out.writeInt(data.length);
        out.write(data);
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
