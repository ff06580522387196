package org.adumbrate.report;

import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.GreyImage;
import org.adumbrate.raster.LightRows;

/**
 * The rows of a picture in memory.
 *
 * @param image the picture
 */
record GreyRows(GreyImage image) implements LightRows {
    @Override
    public PixelSize size() {
        return image.size();
    }

    @Override
    public int channels() {
        return 1;
    }

    @Override
    public void read(int x, int y, int width, int height, float[] light) {
        for (int row = 0; row < height; row++) {
            System.arraycopy(image.light(), (y + row) * size().width() + x, light, row * width, width);
        }
    }

    @Override
    public void releaseAbove(int row) {
        // all of it stays
    }

    @Override
    public void close() {
        // nothing is held but memory
    }
}
