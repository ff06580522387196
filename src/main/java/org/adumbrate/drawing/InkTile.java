package org.adumbrate.drawing;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Arrays;

/** A transparent picture of the size of a tile that layers are drawn on. */
final class InkTile {
    private final BufferedImage image =
            new BufferedImage(TileGrid.COLUMNS, TileGrid.ROWS, BufferedImage.TYPE_INT_ARGB_PRE);
    private final int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();

    /** A tile with the same on it. */
    InkTile copy() {
        InkTile copy = new InkTile();
        System.arraycopy(pixels, 0, copy.pixels, 0, pixels.length);
        return copy;
    }

    /** Takes everything off it. */
    void clear() {
        Arrays.fill(pixels, 0);
    }

    /** Its pixels, row by row: {@code 0xaarrggbb}, encoded sRGB multiplied by alpha. */
    int[] pixels() {
        return pixels;
    }

    /** Draws on it, in mm of the sheet, when it lies at a place of the grid; disposing of it is left to the caller. */
    Graphics2D graphics(TileGrid grid, int column, int row) {
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.translate(-column * TileGrid.COLUMNS, -row * TileGrid.ROWS);
        graphics.scale(grid.canvas().pxPerMmAcross(), grid.canvas().pxPerMmDown());
        return graphics;
    }
}
