package org.adumbrate.raster;

import java.io.IOException;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;

/**
 * Resamples along the two axes one after the other: first down, at the raster's own width, then across. Rows of the
 * raster are decoded once for a strip and stay in the cache.
 */
final class UprightResampler implements Resampler {
    private final LightRows source;
    private final PixelSize canvas;
    private final AxisWeights across;
    private final AxisWeights down;
    private final boolean coversAcross;

    UprightResampler(LightRows source, Affine<RasterPoint, RasterPoint> toCanvas, PixelSize canvas) {
        Affine<RasterPoint, RasterPoint> back = toCanvas.inverse();
        this.source = source;
        this.canvas = canvas;
        this.across = AxisWeights.of(source.size().width(), canvas.width(), back.xx(), back.x0());
        this.down = AxisWeights.of(source.size().height(), canvas.height(), back.yy(), back.y0());
        this.coversAcross = coversAll(across, canvas.width());
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
        int a = down.first(y);
        int b = down.first(y + rows - 1);
        return new RowSpan(Math.min(a, b), Math.max(a, b) + down.taps());
    }

    @Override
    public void releaseAbove(int y) {
        if (y < canvas.height()) {
            source.releaseAbove(sourceRows(y, canvas.height() - y).first());
        }
    }

    @Override
    public Cursor cursor() {
        return new UprightCursor();
    }

    private final class UprightCursor implements Cursor {
        private final int rowLength = source.size().width() * source.channels();
        private final float[] blended = new float[rowLength];
        private float[][] lines = new float[0][];
        private int firstLine;

        @Override
        public void begin(int y, int rows) throws IOException {
            RowSpan span = sourceRows(y, rows);
            int count = span.end() - span.first();
            if (lines.length < count) {
                float[][] more = java.util.Arrays.copyOf(lines, count);
                for (int k = lines.length; k < count; k++) {
                    more[k] = new float[rowLength];
                }
                lines = more;
            }
            firstLine = span.first();
            int width = source.size().width();
            source.read(0, span.end() - 1, width, 1, lines[count - 1]);
            for (int k = 0; k < count - 1; k++) {
                source.read(0, firstLine + k, width, 1, lines[k]);
            }
        }

        @Override
        public void row(int y, float[] light) {
            across.mix(down(y), light, source.channels());
        }

        private float[] down(int y) {
            int first = down.first(y) - firstLine;
            if (down.taps() == 1) {
                return lines[first];
            }
            if (down.taps() == 4) {
                mixFour(y, lines[first], lines[first + 1], lines[first + 2], lines[first + 3]);
                return blended;
            }
            java.util.Arrays.fill(blended, 0);
            for (int j = 0; j < down.taps(); j++) {
                add(lines[first + j], down.weight(y, j));
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
            float row = down.coverage(y);
            if (coversAcross && row == 1) {
                return false;
            }
            for (int k = 0; k < canvas.width(); k++) {
                share[k] = row * across.coverage(k);
            }
            return true;
        }
    }
}
