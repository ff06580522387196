package org.adumbrate.geometry;

/**
 * The size of a raster.
 *
 * @param width columns, at least 1
 * @param height rows, at least 1
 */
public record PixelSize(int width, int height) {
    /** @throws IllegalArgumentException if a side is not positive */
    public PixelSize {
        Space.require(width > 0 && height > 0, () -> "a raster needs at least one pixel each way");
    }

    /** Width divided by height. */
    public double ratio() {
        return (double) width / height;
    }

    /** The number of pixels. */
    public long count() {
        return (long) width * height;
    }

    /** The size after a quarter turn. */
    public PixelSize transposed() {
        return new PixelSize(/* width= */ height, /* height= */ width);
    }

    @Override
    public String toString() {
        return width + " x " + height + " px";
    }
}
