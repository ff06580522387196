package org.adumbrate.drawing;

import org.adumbrate.geometry.PixelBox;
import org.adumbrate.raster.LightSink;
import org.adumbrate.raster.Luminance;
import org.adumbrate.raster.SrgbTable;

/** Lays the ink of tiles over the rows that come, and hands them on. */
final class InkOver implements LightSink.Filler {
    private final PixelBox window;
    private final int under;
    private final int channels;
    private final InkSource ink;
    private final LightSink.Filler next;
    private final float[] row;
    private int y;

    /**
     * @param under channels of the rows that come, 1 or 3
     * @param channels channels of the rows that are handed on
     */
    InkOver(PixelBox window, int under, int channels, InkSource ink, LightSink.Filler next) {
        this.window = window;
        this.under = under;
        this.channels = channels;
        this.ink = ink;
        this.next = next;
        this.row = new float[window.width() * channels];
    }

    @Override
    public void begin(int firstRow, int rows) {
        y = firstRow;
        next.begin(firstRow, rows);
    }

    @Override
    public void row(float[] light) {
        under(light);
        int last = (window.right() - 1) / TileGrid.COLUMNS;
        for (int column = window.left() / TileGrid.COLUMNS; column <= last; column++) {
            int[] pixels = ink.tile(column, y / TileGrid.ROWS);
            if (pixels != null) {
                over(pixels, column * TileGrid.COLUMNS);
            }
        }
        next.row(row);
        y++;
    }

    private void under(float[] light) {
        if (under == channels) {
            System.arraycopy(light, 0, row, 0, row.length);
        } else if (channels == 1) {
            Luminance.ofRow(light, row, window.width());
        } else {
            for (int k = 0; k < row.length; k++) {
                row[k] = light[k / 3];
            }
        }
    }

    /** @param left the column of the tile's edge */
    private void over(int[] pixels, int left) {
        int from = Math.max(left, window.left());
        int count = Math.min(left + TileGrid.COLUMNS, window.right()) - from;
        int start = y % TileGrid.ROWS * TileGrid.COLUMNS + from - left;
        if (channels == 1) {
            overGrey(pixels, start, count, from - window.left());
        } else {
            overColor(pixels, start, count, 3 * (from - window.left()));
        }
    }

    private void overGrey(int[] pixels, int start, int count, int at) {
        for (int x = 0; x < count; x++) {
            int pixel = pixels[start + x];
            if (pixel != 0) {
                row[at + x] = over(pixel & 0xff, pixel >>> 24, row[at + x]);
            }
        }
    }

    private void overColor(int[] pixels, int start, int count, int at) {
        for (int x = 0, k = at; x < count; x++, k += 3) {
            int pixel = pixels[start + x];
            if (pixel != 0) {
                int alpha = pixel >>> 24;
                row[k] = over(pixel >> 16 & 0xff, alpha, row[k]);
                row[k + 1] = over(pixel >> 8 & 0xff, alpha, row[k + 1]);
                row[k + 2] = over(pixel & 0xff, alpha, row[k + 2]);
            }
        }
    }

    /** Source over of an encoded level that is multiplied by its alpha; gives linear light. */
    private static float over(int level, int alpha, float light) {
        return SrgbTable.decode((level + (255 - alpha) * SrgbTable.encode(light)) / 255);
    }

    @Override
    public LightSink.Strip end() {
        return next.end();
    }
}
