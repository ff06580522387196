package org.adumbrate.raster.encode;

import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutput;
import java.io.IOException;

/**
 * Writes one picture, strip by strip: strips are packed by several threads, each with a {@link Packer} of its own, and
 * appended in order from the top by one thread at a time.
 */
public interface StripEncoder extends Closeable {
    /** Makes a packer for one thread. */
    Packer packer();

    /** Appends the next packed strip. */
    void append(Packed strip) throws IOException;

    /**
     * Completes the picture.
     *
     * @return the bytes written
     */
    long finish() throws IOException;

    /** Packs one strip after another; for use by one thread. */
    interface Packer {
        /** Begins a strip. */
        void begin(int y, int rows);

        /** Takes the next row of it, in linear light with the picture's channels; values outside 0 to 1 are cut off. */
        void row(float[] light);

        /** Ends the strip. */
        Packed pack();
    }

    /** A strip ready to be appended. */
    interface Packed {
        /**
         * Writes it, to be read by {@link #readFrom}.
         *
         * @throws IOException if it is not of a kind that can be read again, too
         */
        default void writeTo(DataOutput out) throws IOException {
            throw new IOException("a strip that only its picture knows");
        }

        /**
         * Reads what {@link #writeTo} wrote.
         *
         * @throws IOException if there is no strip
         */
        static Packed readFrom(DataInputStream in) throws IOException {
            return PackedStrip.read(in);
        }
    }
}
