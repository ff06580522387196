package org.adumbrate.raster;

import java.io.IOException;
import java.util.Arrays;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;

/**
 * Resamples along the two axes one after the other: first down, at the raster's own width, then across. Rows of the
 * raster are added up as they are read and a few are held, however many of them make a row of the canvas.
 */
final class UprightResampler implements Resampler {
    /** Rows held by a thread: all that an enlarged row is mixed from, and more than two reduced ones share. */
    private static final int HELD = 4;

    private final LightRows source;
    private final PixelBox window;
    private final AxisWeights across;
    private final AxisWeights down;
    private final boolean coversAcross;
    private final int firstColumn;
    private final int columns;

    UprightResampler(LightRows source, Affine<RasterPoint, RasterPoint> toPixels, Canvas canvas) {
        Affine<RasterPoint, RasterPoint> back = toPixels.inverse();
        this.source = source;
        this.window = canvas.window();
        PixelSize whole = canvas.whole();
        int width = source.size().width();
        int height = source.size().height();
        this.across = AxisWeights.of(width, whole.width(), window.left(), window.width(), back.xx(), back.x0());
        this.down = AxisWeights.of(height, whole.height(), window.top(), window.height(), back.yy(), back.y0());
        this.coversAcross = coversAll(across, window.width());
        int a = across.first(0);
        int b = across.first(window.width() - 1);
        this.firstColumn = Math.min(a, b);
        this.columns = Math.max(a, b) + across.taps() - firstColumn;
    }

    private static boolean coversAll(AxisWeights weights, int count) {
        for (int k = 0; k < count; k++) {
            if (weights.coverage(k) < 1) {
                return false;
            }
        }
        return true;
    }

    @Override
    public int channels() {
        return source.channels();
    }

    @Override
    public RowSpan sourceRows(int y, int rows) {
        int a = down.first(y - window.top());
        int b = down.first(y - window.top() + rows - 1);
        return new RowSpan(Math.min(a, b), Math.max(a, b) + down.taps());
    }

    @Override
    public void releaseAbove(int y) {
        if (y < window.bottom()) {
            source.releaseAbove(sourceRows(y, window.bottom() - y).first());
        }
    }

    @Override
    public Cursor cursor() {
        return new UprightCursor();
    }

    private final class UprightCursor implements Cursor {
        private final RecentLines lines = new RecentLines(source, firstColumn, columns, Math.min(HELD, down.taps()));
        private float[] blended = new float[0];

        @Override
        public void begin(int y, int rows) {
            // rows are read when they are due
        }

        @Override
        public void row(int y, float[] light) throws IOException {
            across.mix(down(y - window.top()), firstColumn, light, source.channels());
        }

        /** @param y counted from the window's top */
        private float[] down(int y) throws IOException {
            int first = down.first(y);
            if (down.taps() == 1) {
                return lines.line(first);
            }
            if (blended.length == 0) {
                blended = new float[columns * source.channels()];
            }
            if (down.taps() == 4) {
                mixFour(y, lines.line(first), lines.line(first + 1), lines.line(first + 2), lines.line(first + 3));
                return blended;
            }
            Arrays.fill(blended, 0);
            for (int j = 0; j < down.taps(); j++) {
                float weight = down.weight(y, j);
                if (weight != 0) {
                    add(lines.line(first + j), weight);
                }
            }
            return blended;
        }

        private void mixFour(int y, float[] p, float[] q, float[] r, float[] s) {
            float a = down.weight(y, 0);
            float b = down.weight(y, 1);
            float c = down.weight(y, 2);
            float d = down.weight(y, 3);
            for (int k = 0; k < blended.length; k++) {
                blended[k] = a * p[k] + b * q[k] + c * r[k] + d * s[k];
            }
        }

        private void add(float[] line, float weight) {
            for (int k = 0; k < blended.length; k++) {
                blended[k] += weight * line[k];
            }
        }

        @Override
        public boolean coverage(int y, float[] share) {
            float row = down.coverage(y - window.top());
            if (coversAcross && row == 1) {
                return false;
            }
            for (int k = 0; k < window.width(); k++) {
                share[k] = row * across.coverage(k);
            }
            return true;
        }
    }
}
