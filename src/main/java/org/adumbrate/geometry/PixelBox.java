package org.adumbrate.geometry;

/**
 * A rectangle of whole pixels in a raster.
 *
 * @param left the first column
 * @param top the first row
 * @param width columns, at least 1
 * @param height rows, at least 1
 */
public record PixelBox(int left, int top, int width, int height) {
    /** @throws IllegalArgumentException if a side is not positive */
    public PixelBox {
        Space.require(width > 0 && height > 0, () -> "a window needs at least one pixel each way");
    }

    /** A whole raster. */
    public static PixelBox of(PixelSize size) {
        return new PixelBox(0, 0, size.width(), size.height());
    }

    /** The column after the last. */
    public int right() {
        return left + width;
    }

    /** The row after the last. */
    public int bottom() {
        return top + height;
    }

    /** Its size. */
    public PixelSize size() {
        return new PixelSize(width, height);
    }

    /** True if all of another rectangle lies in it. */
    public boolean contains(PixelBox other) {
        return other.left >= left && other.top >= top && other.right() <= right() && other.bottom() <= bottom();
    }
}
