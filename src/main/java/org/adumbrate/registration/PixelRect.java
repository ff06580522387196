package org.adumbrate.registration;

import org.adumbrate.geometry.PixelSize;

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

    /** The rectangle in pixels that are {@code times} as large, rounded inwards. */
    PixelRect reduced(int times) {
        return new PixelRect((left + times - 1) / times, (top + times - 1) / times, right / times, bottom / times);
    }

    /** The rectangle in pixels of the picture that this one's picture was reduced from; its far sides stay far sides. */
    PixelRect enlarged(int times, PixelSize size) {
        return new PixelRect(
                left * times,
                top * times,
                right >= size.width() / times ? size.width() : right * times,
                bottom >= size.height() / times ? size.height() : bottom * times);
    }
}
