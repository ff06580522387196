package org.adumbrate.raster;

import java.io.IOException;
import org.adumbrate.geometry.PixelSize;

/** Makes a grey picture of a raster at a whole fraction of its size, each pixel the mean light of a block. */
public final class GreyReduction {
    private GreyReduction() {}

    /** The smallest whole factor that brings a raster down to so many pixels. */
    public static int factorFor(PixelSize size, long mostPixels) {
        int factor = 1;
        while (reduced(size, factor).count() > mostPixels) {
            factor++;
        }
        return factor;
    }

    private static PixelSize reduced(PixelSize size, int factor) {
        return new PixelSize(Math.max(1, size.width() / factor), Math.max(1, size.height() / factor));
    }

    /**
     * Reads a raster once from top to bottom.
     *
     * @param rows the raster
     * @param factor pixels of a block each way; a last incomplete block is left out
     */
    public static GreyImage of(LightRows rows, int factor) throws IOException {
        PixelSize size = reduced(rows.size(), factor);
        int blockWidth = Math.min(factor, rows.size().width());
        int blockHeight = Math.min(factor, rows.size().height());
        float[] light = new float[Math.toIntExact(size.count())];
        float[] line = new float[rows.size().width() * rows.channels()];
        float share = 1f / (blockWidth * blockHeight);
        for (int y = 0; y < size.height() * blockHeight; y++) {
            rows.read(0, y, rows.size().width(), 1, line);
            addRow(line, rows.channels(), blockWidth, share, light, y / blockHeight * size.width(), size.width());
            rows.releaseAbove(y + 1);
        }
        return new GreyImage(size, light);
    }

    private static void addRow(float[] line, int channels, int block, float share, float[] light, int at, int width) {
        for (int k = 0, x = 0; k < width; k++) {
            float sum = 0;
            for (int j = 0; j < block; j++, x += channels) {
                sum += channels == 1 ? line[x] : Luminance.of(line[x], line[x + 1], line[x + 2]);
            }
            light[at + k] += share * sum;
        }
    }
}
