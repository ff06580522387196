package org.adumbrate.raster;

import java.io.Closeable;
import java.io.IOException;
import org.adumbrate.geometry.PixelSize;

/** A raster whose pixels are asked for by the rectangle, in linear light. Safe for use by several threads at once. */
public interface LightRows extends Closeable {
    /** Its size, turned for viewing. */
    PixelSize size();

    /** Channels of a pixel: 1 (grey) or 3 (linear sRGB primaries). */
    int channels();

    /**
     * Reads a rectangle, which must lie inside the raster and below every row that was released. Waits for rows that are
     * still being decoded.
     *
     * @param x first column
     * @param y first row
     * @param width columns
     * @param height rows
     * @param light receives {@code height · width · channels} values, row by row
     * @throws IOException if the raster cannot be read so far
     */
    void read(int x, int y, int width, int height, float[] light) throws IOException;

    /** Promises that no row above this one will be read again. */
    void releaseAbove(int row);

    /**
     * True if so few rows can be read at a time, from the first not yet released, that the rows of a canvas must be made of
     * them in order, one after the other.
     */
    default boolean inTurn() {
        return false;
    }
}
