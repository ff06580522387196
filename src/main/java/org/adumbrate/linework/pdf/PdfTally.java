package org.adumbrate.linework.pdf;

/**
 * How much there is to draw, forms as often as they are drawn; numbers may be far too large for a whole number.
 *
 * @param bytes of content
 * @param strokes operators that stroke
 * @param forms forms drawn
 */
record PdfTally(double bytes, double strokes, double forms) {
    static final PdfTally NONE = new PdfTally(0, 0, 0);

    PdfTally plus(PdfTally more) {
        return new PdfTally(bytes + more.bytes, strokes + more.strokes, forms + more.forms);
    }

    /** A form of so much, drawn so many times. */
    PdfTally drawn(int times) {
        return new PdfTally(times * bytes, times * strokes, times * (forms + 1));
    }
}
