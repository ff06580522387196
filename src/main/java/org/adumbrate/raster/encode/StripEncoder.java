package org.adumbrate.raster.encode;

import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutput;
import java.io.IOException;
import org.adumbrate.raster.LightSink;

/** A sink that writes a picture: its strips are compressed where they are filled, and appended in order. */
public interface StripEncoder extends LightSink, Closeable {
    /**
     * Completes the picture.
     *
     * @return the bytes written
     */
    long finish() throws IOException;

    /** A strip ready to be appended. */
    interface Packed extends Strip {
        /** Writes it, to be read by {@link #readFrom}. */
        void writeTo(DataOutput out) throws IOException;

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
