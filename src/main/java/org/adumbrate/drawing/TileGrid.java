package org.adumbrate.drawing;

import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PixelBox;

/**
 * The tiles in which Java2D draws, and those of them that a window of a canvas needs. Tiles lie at fixed places of the whole grid and
 * are always drawn whole: clipping changes a rounding here and there in how a line is drawn, so tiles that followed the window or
 * the rows asked for would show in the pixels.
 *
 * @param canvas what is drawn on
 */
record TileGrid(Canvas canvas) {
    /** The rows of a tile; the first begins at row 0. */
    static final int ROWS = 64;

    /** The columns of a tile; the first begins at column 0. */
    static final int COLUMNS = 512;

    /** The first column of tiles. */
    int firstColumn() {
        return canvas.window().left() / COLUMNS;
    }

    /** The first row of tiles. */
    int firstRow() {
        return canvas.window().top() / ROWS;
    }

    /** How many columns of tiles there are. */
    int columns() {
        return (canvas.window().right() - 1) / COLUMNS - firstColumn() + 1;
    }

    /** How many rows of tiles there are. */
    int rows() {
        return (canvas.window().bottom() - 1) / ROWS - firstRow() + 1;
    }

    /** The part of a tile that lies in the window. */
    PixelBox inWindow(int column, int row) {
        PixelBox window = canvas.window();
        int left = Math.max(window.left(), column * COLUMNS);
        int top = Math.max(window.top(), row * ROWS);
        int right = Math.min(window.right(), (column + 1) * COLUMNS);
        int bottom = Math.min(window.bottom(), (row + 1) * ROWS);
        return new PixelBox(left, top, right - left, bottom - top);
    }

    /** What all the tiles cover of the sheet, in mm. */
    Extent extent() {
        return new Extent(
                leftMm(firstColumn()),
                topMm(firstRow()),
                leftMm(firstColumn() + columns()),
                topMm(firstRow() + rows()));
    }

    /** Where a column of tiles begins on the sheet, in mm. */
    double leftMm(int column) {
        return column * (double) COLUMNS / canvas.pxPerMmAcross();
    }

    /** Where a row of tiles begins on the sheet, in mm. */
    double topMm(int row) {
        return row * (double) ROWS / canvas.pxPerMmDown();
    }
}
