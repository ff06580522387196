package org.adumbrate.raster;

/** Takes decoded samples, piece by piece; called by one thread. It may make the decoder wait. */
@FunctionalInterface
public interface SampleSink {
    /**
     * Takes a piece of one row.
     *
     * @param x first column of the piece
     * @param y its row, from 0 at the top of the raster as stored
     * @param pixels its width
     * @param samples holds the piece, valid only during the call
     * @param offset index of the first sample of the piece
     * @throws DecodingStopped if no more is wanted; the reader lets it pass
     */
    void put(int x, int y, int pixels, Samples samples, int offset);
}
