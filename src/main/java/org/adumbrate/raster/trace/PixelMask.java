package org.adumbrate.raster.trace;

/** Which pixels of a raster belong to something. */
@FunctionalInterface
public interface PixelMask {
    /** Whether the pixel in a column and a row, both counted from 0 at the top left, belongs to it. */
    boolean covers(int column, int row);
}
