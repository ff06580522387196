package org.adumbrate.geometry;

/**
 * An upright rectangle on the sheet, in mm.
 *
 * @param left x of the left edge
 * @param top y of the top edge
 * @param width positive
 * @param height positive
 */
public record Frame(double left, double top, double width, double height) {
    /** @throws IllegalArgumentException if the frame is empty or not finite */
    public Frame {
        Space.require(
                width > 0 && height > 0 && Double.isFinite(left + top + width + height),
                () -> "a frame needs a positive width and height");
    }

    /** The right edge's x. */
    public double right() {
        return left + width;
    }

    /** The bottom edge's y. */
    public double bottom() {
        return top + height;
    }

    /** Width divided by height. */
    public double ratio() {
        return width / height;
    }

    /** The map that lays a whole raster onto this frame. */
    public Affine<RasterPoint, SheetPoint> placing(PixelSize raster) {
        return Affine.scalingThenShift(
                Space.RASTER, Space.SHEET, width / raster.width(), height / raster.height(), left, top);
    }
}
