package org.adumbrate.linework.pdf;

import org.adumbrate.linework.clip.TooIntricateException;

/** How much may still be drawn of a page, whatever draws it: forms, glyphs, tiles, masks and notes spend of the same. */
final class PdfBudget {
    private static final int MOST_OPERATORS = 30_000_000;

    /** Content read all told, a form as often as it is drawn. */
    private static final long MOST_BYTES = 200_000_000;

    private int depth;
    private int forms;
    private int operators;
    private long bytes;

    /** How many operators were run. */
    int operators() {
        return operators;
    }

    void spendOperator() {
        if (++operators > MOST_OPERATORS) {
            throw new TooIntricateException("takes more than " + MOST_OPERATORS + " steps to draw");
        }
    }

    void spendBytes(int count) {
        bytes += count;
        if (bytes > MOST_BYTES) {
            throw new TooIntricateException("takes more than " + MOST_BYTES + " bytes to draw");
        }
    }

    /** Goes into something that is drawn in place. */
    void enter() {
        if (++forms > PdfExpansion.MOST_FORMS || depth >= PdfExpansion.DEEPEST_FORM) {
            throw new TooIntricateException(PdfExpansion.TOO_DEEP);
        }
        depth++;
    }

    void leave() {
        depth--;
    }
}
