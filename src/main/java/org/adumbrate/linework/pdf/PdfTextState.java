package org.adumbrate.linework.pdf;

import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;

/**
 * As much of the text state (ISO 32000-1, 9.3) as places glyphs; lengths in text space.
 *
 * @param font the font's dictionary
 * @param size the font's size
 * @param charSpace added behind each glyph
 * @param wordSpace added behind each space
 * @param stretch how far glyphs are stretched across, 1 for not at all
 * @param leading from one line to the next
 * @param rise above the base line
 * @param mode the rendering mode
 */
record PdfTextState(
        Optional<COSDictionary> font,
        double size,
        double charSpace,
        double wordSpace,
        double stretch,
        double leading,
        double rise,
        int mode) {
    /** What holds at the beginning of a page. */
    static final PdfTextState INITIAL = new PdfTextState(Optional.empty(), 0, 0, 0, 1, 0, 0, 0);

    private static final int INVISIBLE = 3;

    /** Whether text is there to be searched and not to be seen. */
    boolean isInvisible() {
        return mode == INVISIBLE;
    }

    PdfTextState withFont(Optional<COSDictionary> other, double otherSize) {
        return new PdfTextState(other, otherSize, charSpace, wordSpace, stretch, leading, rise, mode);
    }

    PdfTextState withCharSpace(double value) {
        return new PdfTextState(font, size, value, wordSpace, stretch, leading, rise, mode);
    }

    PdfTextState withWordSpace(double value) {
        return new PdfTextState(font, size, charSpace, value, stretch, leading, rise, mode);
    }

    PdfTextState withStretch(double value) {
        return new PdfTextState(font, size, charSpace, wordSpace, value, leading, rise, mode);
    }

    PdfTextState withLeading(double value) {
        return new PdfTextState(font, size, charSpace, wordSpace, stretch, value, rise, mode);
    }

    PdfTextState withRise(double value) {
        return new PdfTextState(font, size, charSpace, wordSpace, stretch, leading, value, mode);
    }

    PdfTextState withMode(int value) {
        return new PdfTextState(font, size, charSpace, wordSpace, stretch, leading, rise, value);
    }
}
