package org.adumbrate.raster;

import org.adumbrate.geometry.PixelSize;

/** A whole grey picture in memory, in linear light. */
public final class GreyImage {
    private final PixelSize size;
    private final float[] light;

    /**
     * Wraps an array, which is not copied.
     *
     * @param size its size
     * @param light one value a pixel, row by row from the top; 0 is black, 1 is white
     * @throws IllegalArgumentException if the array has another length than the size asks for
     */
    public GreyImage(PixelSize size, float[] light) {
        if (light.length != size.count()) {
            throw new IllegalArgumentException(light.length + " values for " + size);
        }
        this.size = size;
        this.light = light;
    }

    /** Its size. */
    public PixelSize size() {
        return size;
    }

    /** The values themselves, row by row from the top. */
    public float[] light() {
        return light;
    }

    /** The light of the pixel in column x and row y. */
    public float at(int x, int y) {
        return light[y * size.width() + x];
    }
}
