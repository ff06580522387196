package org.adumbrate.geometry;

import java.util.Optional;

/**
 * What a picture of the sheet is computed on: the grid of pixels that covers the whole sheet at some scale, and a window on
 * it. Everything is computed in coordinates of the whole grid and only the window's pixels are made, so that a window is the crop of
 * the whole, byte for byte. The scales across and down differ by the rounding of the grid to whole pixels.
 *
 * @param sheet the sheet's printed size
 * @param whole the grid that covers the sheet
 * @param window the pixels of it that are made
 */
public record Canvas(SheetSize sheet, PixelSize whole, PixelBox window) {
    /** What a place may lie beyond the edge of a pixel and still count as on it, in pixels: far more than rounding does. */
    private static final double SLACK = 1e-6;

    /** @throws IllegalArgumentException if the window does not lie on the grid */
    public Canvas {
        Space.require(
                PixelBox.of(whole).contains(window),
                () -> "the window " + window + " reaches beyond a grid of " + whole);
    }

    /** The whole sheet on a grid. */
    public static Canvas whole(SheetSize sheet, PixelSize size) {
        return new Canvas(sheet, size, PixelBox.of(size));
    }

    /** The whole sheet at a resolution in pixels per inch. */
    public static Canvas whole(SheetSize sheet, double dpi) {
        return whole(sheet, sheet.pixelsAt(dpi));
    }

    /** Another window on the same grid. */
    public Canvas window(PixelBox box) {
        return new Canvas(sheet, whole, box);
    }

    /** The least window on the same grid that holds all of a frame that lies on the sheet; none if nothing of it does. */
    public Optional<Canvas> window(Frame frame) {
        if (frame.left() >= sheet.widthMm()
                || frame.right() <= 0
                || frame.top() >= sheet.heightMm()
                || frame.bottom() <= 0) {
            return Optional.empty();
        }
        int left = first(frame.left() * pxPerMmAcross(), whole.width());
        int top = first(frame.top() * pxPerMmDown(), whole.height());
        int right = end(frame.right() * pxPerMmAcross(), left, whole.width());
        int bottom = end(frame.bottom() * pxPerMmDown(), top, whole.height());
        return Optional.of(window(new PixelBox(left, top, right - left, bottom - top)));
    }

    private static int first(double edge, int count) {
        return (int) Math.max(0, Math.min(count - 1.0, Math.floor(edge + SLACK)));
    }

    private static int end(double edge, int first, int count) {
        return (int) Math.max(first + 1.0, Math.min(count, Math.ceil(edge - SLACK)));
    }

    /** The size of the picture: the window's. */
    public PixelSize size() {
        return window.size();
    }

    /** Columns for a millimetre. */
    public double pxPerMmAcross() {
        return whole.width() / sheet.widthMm();
    }

    /** Rows for a millimetre. */
    public double pxPerMmDown() {
        return whole.height() / sheet.heightMm();
    }

    /** From the sheet to pixels of the whole grid. */
    public Affine<SheetPoint, RasterPoint> toPixels() {
        return Affine.scaling(Space.SHEET, Space.RASTER, pxPerMmAcross(), pxPerMmDown());
    }

    /** From pixels of the whole grid to the sheet. */
    public Affine<RasterPoint, SheetPoint> toSheet() {
        return Affine.scaling(
                Space.RASTER, Space.SHEET, sheet.widthMm() / whole.width(), sheet.heightMm() / whole.height());
    }
}
