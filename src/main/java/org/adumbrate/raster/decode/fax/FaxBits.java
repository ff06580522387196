package org.adumbrate.raster.decode.fax;

import java.io.IOException;
import java.io.InputStream;

/** Bits of a strip, the first in the highest place of each byte or, by TIFF's FillOrder 2, in the lowest. */
public final class FaxBits {
    private static final int MOST = 24;

    private final InputStream in;
    private final boolean reversed;
    private long left;
    private long buffer;
    private int held;
    private int beyond;

    /** @param left how many bytes there are */
    public FaxBits(InputStream in, long left, boolean reversed) {
        this.in = in;
        this.left = left;
        this.reversed = reversed;
    }

    private void hold(int count) throws IOException {
        while (held < count) {
            int value = left > 0 ? in.read() : -1;
            left--;
            if (value < 0) {
                beyond += 8;
                value = 0;
            }
            int next = reversed ? Integer.reverse(value) >>> MOST : value;
            buffer = buffer << 8 | next;
            held += 8;
        }
    }

    /** The next bits, up to 24, left where they are; behind the end there are zeros. */
    int peek(int count) throws IOException {
        hold(count);
        return (int) (buffer >>> (held - count)) & ((1 << count) - 1);
    }

    /** Passes over bits that were peeked at. */
    void skip(int count) throws IOException {
        hold(count);
        held -= count;
    }

    /** Passes over what is left of a byte. */
    void alignToByte() {
        held -= held % 8;
    }

    /** Whether bits behind the end have been passed over. */
    boolean isOver() {
        return beyond > held;
    }

    /** Whether there is nothing left. */
    boolean isAtEnd() throws IOException {
        hold(1);
        return beyond >= held;
    }
}
