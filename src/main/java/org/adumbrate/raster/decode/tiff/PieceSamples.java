package org.adumbrate.raster.decode.tiff;

import java.awt.image.Raster;
import org.adumbrate.raster.SampleSink;

/** Turns pieces of a picture, as an image library holds them, into samples. */
@FunctionalInterface
interface PieceSamples {
    /**
     * Puts the rows of a piece into a sink.
     *
     * @param piece the piece
     * @param x the column to which its first pixels belong
     * @param y the row to which its first row belongs
     */
    void put(Raster piece, int x, int y, SampleSink sink);
}
