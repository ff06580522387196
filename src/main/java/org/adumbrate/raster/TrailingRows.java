package org.adumbrate.raster;

import java.io.IOException;
import org.adumbrate.geometry.PixelSize;

/**
 * Rows for one reader that goes down a raster and looks back a few rows at most: what lies above is released with every
 * read, so that a mean over any number of rows passes through a window of some.
 *
 * @param rows what is read
 */
record TrailingRows(LightRows rows) implements LightRows {
    /** Rows that can be read again. */
    private static final int BACK = 8;

    /** A window for such a reader: what it looks back, and what the decoder may be ahead of it. */
    static final int WINDOW = 64;

    @Override
    public PixelSize size() {
        return rows.size();
    }

    @Override
    public int channels() {
        return rows.channels();
    }

    @Override
    public void read(int x, int y, int width, int height, float[] light) throws IOException {
        releaseAbove(y - BACK);
        rows.read(x, y, width, height, light);
    }

    @Override
    public void releaseAbove(int row) {
        rows.releaseAbove(Math.max(0, row));
    }

    @Override
    public void close() throws IOException {
        rows.close();
    }
}
