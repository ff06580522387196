package org.adumbrate.registration;

/**
 * A rectangle of whole pixels, half open: it holds columns {@code left} to {@code right - 1}, and likewise rows.
 *
 * @param left first column
 * @param top first row
 * @param right column after the last
 * @param bottom row after the last
 */
record PixelRect(int left, int top, int right, int bottom) {
    int width() {
        return right - left;
    }

    int height() {
        return bottom - top;
    }

    /** True if the point lies inside and at least {@code margin} pixels away from every side. */
    boolean holds(double x, double y, double margin) {
        return x >= left + margin && x <= right - margin && y >= top + margin && y <= bottom - margin;
    }

    /** The rectangle in pixels that are {@code times} as large, rounded inwards. */
    PixelRect reduced(int times) {
        return new PixelRect(
                (left + times - 1) / times, (top + times - 1) / times, right / times, bottom / times);
    }
}
