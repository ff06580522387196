package org.adumbrate.raster;

import java.io.IOException;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.RasterPoint;

/**
 * Resamples under any affine placement, turned or sheared: for each canvas pixel the raster is sampled by the cubic where
 * the pixel's centre falls; where a canvas pixel covers more than one raster pixel, on an even grid of places in it no
 * wider apart than a raster pixel, which averages over the area. Works in tiles, so that only a patch of the raster is
 * decoded at a time.
 */
final class TurnedResampler implements Resampler {
    private static final int LARGEST_TILE = 64;
    private static final int REACH = 2;

    /** A tile is made smaller rather than read more of the raster for it, in pixels. */
    private static final int PATCH = 1 << 18;

    private final LightRows source;
    private final PixelBox window;
    private final Affine<RasterPoint, RasterPoint> toCanvas;
    private final Affine<RasterPoint, RasterPoint> back;
    private final int places;
    private final int tile;

    TurnedResampler(LightRows source, Affine<RasterPoint, RasterPoint> toCanvas, PixelBox window) {
        this.source = source;
        this.window = window;
        this.toCanvas = toCanvas;
        this.back = toCanvas.inverse();
        double alongX = Math.hypot(back.xx(), back.yx());
        double alongY = Math.hypot(back.xy(), back.yy());
        this.places = (int) Math.ceil(Math.max(1, Math.max(alongX, alongY)) - 1e-9);
        this.tile = tile(back);
    }

    /** Rows and columns of the canvas that are computed at a time, from a patch of the raster. */
    int tile() {
        return tile;
    }

    /** The same for a map from the canvas back to the raster. */
    static int tile(Affine<RasterPoint, RasterPoint> back) {
        int tile = LARGEST_TILE;
        while (tile > 1 && patch(back, tile) > PATCH) {
            tile /= 2;
        }
        return tile;
    }

    private static double patch(Affine<RasterPoint, RasterPoint> back, int tile) {
        double margins = 2 * (REACH + 2);
        return (tile * (Math.abs(back.xx()) + Math.abs(back.xy())) + margins)
                * (tile * (Math.abs(back.yx()) + Math.abs(back.yy())) + margins);
    }

    @Override
    public int channels() {
        return source.channels();
    }

    @Override
    public RowSpan sourceRows(int y, int rows) {
        return rowsOf(window.left(), y, window.width(), rows);
    }

    @Override
    public void releaseAbove(int y) {
        if (y < window.bottom()) {
            source.releaseAbove(sourceRows(y, window.bottom() - y).first());
        }
    }

    private RowSpan rowsOf(int x, int y, int width, int height) {
        int size = source.size().height();
        return span(back.mapY(x, y), back.yx() * width, back.yy() * height, size);
    }

    private RowSpan columnsOf(int x, int y, int width, int height) {
        int size = source.size().width();
        return span(back.mapX(x, y), back.xx() * width, back.xy() * height, size);
    }

    /** What a rectangle of the canvas reaches along one axis of the raster: from its corner along its two sides. */
    private static RowSpan span(double corner, double across, double down, int size) {
        double from = corner + Math.min(0, across) + Math.min(0, down);
        double to = corner + Math.max(0, across) + Math.max(0, down);
        int first = (int) Math.max(0, Math.min(size - 1.0, Math.floor(from) - REACH - 1));
        int end = (int) Math.max(first + 1.0, Math.min(size, Math.ceil(to) + REACH + 1));
        return new RowSpan(first, end);
    }

    @Override
    public Cursor cursor() {
        return new TurnedCursor();
    }

    private final class TurnedCursor implements Cursor {
        private final int channels = source.channels();
        private final float[] pixel = new float[channels];
        private float[] strip = new float[0];
        private float[] patch = new float[0];
        private RowSpan patchColumns;
        private RowSpan patchRows;
        private int top;

        @Override
        public void begin(int y, int rows) throws IOException {
            top = y;
            int length = rows * window.width() * channels;
            if (strip.length < length) {
                strip = new float[length];
            }
            for (int from = y; from < y + rows; from += tile) {
                for (int x = window.left(); x < window.right(); x += tile) {
                    tile(x, from, Math.min(tile, window.right() - x), Math.min(tile, y + rows - from));
                }
            }
        }

        private void tile(int x, int y, int width, int rows) throws IOException {
            patchColumns = columnsOf(x, y, width, rows);
            patchRows = rowsOf(x, y, width, rows);
            int patchWidth = patchColumns.end() - patchColumns.first();
            int patchHeight = patchRows.end() - patchRows.first();
            int length = patchWidth * patchHeight * channels;
            if (patch.length < length) {
                patch = new float[length];
            }
            source.read(patchColumns.first(), patchRows.first(), patchWidth, patchHeight, patch);
            for (int row = 0; row < rows; row++) {
                for (int column = 0; column < width; column++) {
                    average(x + column, y + row);
                    int at = ((y - top + row) * window.width() + x - window.left() + column) * channels;
                    System.arraycopy(pixel, 0, strip, at, channels);
                }
            }
        }

        private void average(int x, int y) {
            java.util.Arrays.fill(pixel, 0);
            float share = 1f / (places * places);
            for (int j = 0; j < places; j++) {
                for (int i = 0; i < places; i++) {
                    double px = x + (i + 0.5) / places;
                    double py = y + (j + 0.5) / places;
                    sample(back.mapX(px, py) - 0.5, back.mapY(px, py) - 0.5, share);
                }
            }
        }

        private void sample(double u, double v, float share) {
            int baseX = (int) Math.floor(u) - 1;
            int baseY = (int) Math.floor(v) - 1;
            int patchWidth = patchColumns.end() - patchColumns.first();
            for (int j = 0; j < 4; j++) {
                float wy = share * (float) CubicKernel.CATMULL_ROM.weight(v - (baseY + j));
                int row = clamp(baseY + j, patchRows, source.size().height());
                for (int i = 0; i < 4; i++) {
                    float weight = wy * (float) CubicKernel.CATMULL_ROM.weight(u - (baseX + i));
                    int column = clamp(baseX + i, patchColumns, source.size().width());
                    int at = (row * patchWidth + column) * channels;
                    for (int c = 0; c < channels; c++) {
                        pixel[c] += weight * patch[at + c];
                    }
                }
            }
        }

        private int clamp(int index, RowSpan span, int size) {
            int inside = Math.max(0, Math.min(index, size - 1));
            return Math.max(span.first(), Math.min(inside, span.end() - 1)) - span.first();
        }

        @Override
        public void row(int y, float[] light) {
            int length = window.width() * channels;
            System.arraycopy(strip, (y - top) * length, light, 0, length);
        }

        /** Distances to the raster's four sides, in canvas pixels, each cut to a ramp one pixel wide. */
        @Override
        public boolean coverage(int y, float[] share) {
            double acrossX = Math.abs(toCanvas.determinant()) / Math.hypot(toCanvas.xy(), toCanvas.yy());
            double acrossY = Math.abs(toCanvas.determinant()) / Math.hypot(toCanvas.xx(), toCanvas.yx());
            boolean whole = true;
            for (int k = 0; k < window.width(); k++) {
                double x = window.left() + k + 0.5;
                double u = back.mapX(x, y + 0.5);
                double v = back.mapY(x, y + 0.5);
                double inside = ramp(u * acrossX)
                        * ramp((source.size().width() - u) * acrossX)
                        * ramp(v * acrossY)
                        * ramp((source.size().height() - v) * acrossY);
                share[k] = (float) inside;
                whole &= inside == 1;
            }
            return !whole;
        }

        private static double ramp(double distance) {
            return Math.max(0, Math.min(1, distance + 0.5));
        }
    }
}
