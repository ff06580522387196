package org.adumbrate.raster;

import org.adumbrate.geometry.PixelSize;

/**
 * How a stored raster is to be turned for viewing; the constants stand in the order of the Exif tag Orientation (JEITA
 * CP-3451, tag 0x0112), values 1 to 8, and are named by where the stored top-left pixel is seen.
 */
public enum Orientation {
    /** 1: as stored. */
    TOP_LEFT(false, false, false),
    /** 2: mirrored left to right. */
    TOP_RIGHT(true, false, false),
    /** 3: turned by half. */
    BOTTOM_RIGHT(true, true, false),
    /** 4: mirrored top to bottom. */
    BOTTOM_LEFT(false, true, false),
    /** 5: rows seen as columns. */
    LEFT_TOP(false, false, true),
    /** 6: to be turned clockwise by a quarter. */
    RIGHT_TOP(true, false, true),
    /** 7: rows seen as columns from the other corner. */
    RIGHT_BOTTOM(true, true, true),
    /** 8: to be turned anticlockwise by a quarter. */
    LEFT_BOTTOM(false, true, true);

    private final boolean flipsX;
    private final boolean flipsY;
    private final boolean transposes;

    Orientation(boolean flipsX, boolean flipsY, boolean transposes) {
        this.flipsX = flipsX;
        this.flipsY = flipsY;
        this.transposes = transposes;
    }

    /** The orientation of an Exif value; anything outside 1 to 8 counts as 1. */
    public static Orientation ofExif(int value) {
        return value >= 1 && value <= 8 ? values()[value - 1] : TOP_LEFT;
    }

    /** True if columns as stored are seen as rows. */
    public boolean transposes() {
        return transposes;
    }

    /** The size as seen. */
    public PixelSize seen(PixelSize stored) {
        return transposes ? stored.transposed() : stored;
    }

    /** The column at which the stored pixel (x, y) is seen, given the size as seen. */
    public int seenX(int x, int y, PixelSize seen) {
        int column = transposes ? y : x;
        return flipsX ? seen.width() - 1 - column : column;
    }

    /** The row at which the stored pixel (x, y) is seen, given the size as seen. */
    public int seenY(int x, int y, PixelSize seen) {
        int row = transposes ? x : y;
        return flipsY ? seen.height() - 1 - row : row;
    }
}
