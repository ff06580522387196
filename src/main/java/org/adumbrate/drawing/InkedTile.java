package org.adumbrate.drawing;

import java.nio.ByteBuffer;
import org.adumbrate.geometry.PixelBox;

/** A tile of an inked drawing that has ink on it. Never changed. */
public final class InkedTile {
    private final InkTile tile;
    private final int column;
    private final int row;
    private final PixelBox box;

    InkedTile(InkTile tile, int column, int row, PixelBox box) {
        this.tile = tile;
        this.column = column;
        this.row = row;
        this.box = box;
    }

    /** What tells it from others: the same object for the same ink in the same place. */
    public Object identity() {
        return tile;
    }

    /** The part of the window that it covers, on the grid of the whole sheet. */
    public PixelBox box() {
        return box;
    }

    /**
     * Puts its pixels row by row, encoded sRGB multiplied by alpha, in bytes: red, green, blue and alpha; of a grey drawing its level and
     * alpha.
     *
     * @param channels of the drawing: 1 or 3
     */
    public void putTo(ByteBuffer bytes, int channels) {
        int[] pixels = tile.pixels();
        int left = box.left() - column * TileGrid.COLUMNS;
        int top = box.top() - row * TileGrid.ROWS;
        for (int y = top; y < top + box.height(); y++) {
            for (int x = left; x < left + box.width(); x++) {
                int pixel = pixels[y * TileGrid.COLUMNS + x];
                if (channels == 1) {
                    bytes.putShort((short) (pixel << 8 | pixel >>> 24));
                } else {
                    bytes.putInt(pixel << 8 | pixel >>> 24);
                }
            }
        }
    }
}
