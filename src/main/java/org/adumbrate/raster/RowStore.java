package org.adumbrate.raster;

import java.io.Closeable;

/** Keeps rows of stored samples, in the geometry as seen. */
interface RowStore extends Closeable {
    /** Stores samples of one row, beginning at a column. */
    void put(int x, int y, int pixels, Samples samples, int offset);

    /** Decodes a piece of one row. */
    void decode(LightDecoder decoder, int x, int y, int pixels, float[] light, int at);

    @Override
    void close();
}
