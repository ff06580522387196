package org.adumbrate.geometry;

import java.util.Locale;

/**
 * The printed size of a drawing, or of a page.
 *
 * @param widthMm width in mm, positive
 * @param heightMm height in mm, positive
 */
public record SheetSize(double widthMm, double heightMm) {
    /** @throws IllegalArgumentException if a side is not a positive finite number */
    public SheetSize {
        Space.require(
                widthMm > 0 && heightMm > 0 && Double.isFinite(widthMm) && Double.isFinite(heightMm),
                () -> "a sheet needs a positive width and height");
    }

    /** Width divided by height. */
    public double ratio() {
        return widthMm / heightMm;
    }

    /**
     * The raster that covers the sheet at a resolution: {@code floor(mm / 25.4 · dpi + 1/2)} pixels each way.
     *
     * @param dpi pixels per inch, positive
     */
    public PixelSize pixelsAt(double dpi) {
        return new PixelSize(pixels(widthMm, dpi), pixels(heightMm, dpi));
    }

    private static int pixels(double mm, double dpi) {
        double exact = Math.floor(mm / Length.MM_PER_INCH * dpi + 0.5);
        Space.require(exact <= Integer.MAX_VALUE, () -> "the sheet is too large at " + dpi + " dpi");
        return Math.max(1, (int) exact);
    }

    /** The whole sheet as a frame. */
    public Frame frame() {
        return new Frame(0, 0, widthMm, heightMm);
    }

    /** Such as {@code 431.8 x 279.4 mm}. */
    @Override
    public String toString() {
        return trimmed(widthMm) + " x " + trimmed(heightMm) + " mm";
    }

    private static String trimmed(double mm) {
        String text = String.format(Locale.ROOT, "%.2f", mm);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
