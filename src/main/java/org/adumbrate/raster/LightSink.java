package org.adumbrate.raster;

import java.io.IOException;

/**
 * What takes the light of a picture: an encoder, a drawing that lays its lines over it and hands it on, a picture in memory. Strips
 * are filled by several threads, each with a {@link Filler} of its own, and taken in order from the top by one thread at a time.
 * Rows are numbered on the grid of the whole sheet, and hold the columns of the window that is made.
 */
public interface LightSink {
    /** Makes a filler for one thread. */
    Filler filler();

    /** Takes the next strip, which one of its own fillers made. */
    void take(Strip strip) throws IOException;

    /** True if every strip but the last must have the same number of rows; else the first may be shorter, too. */
    default boolean wantsEvenStrips() {
        return false;
    }

    /** Fills one strip after another; for use by one thread. */
    interface Filler {
        /**
         * Begins a strip.
         *
         * @param y its first row
         * @param rows how many it has
         */
        void begin(int y, int rows);

        /**
         * Takes the next row of it.
         *
         * @param light linear light, the sink's channels for each column; not kept. Values outside 0 to 1 are cut off
         */
        void row(float[] light);

        /** Ends the strip. */
        Strip end();
    }

    /** A strip ready to be taken. */
    interface Strip {}
}
