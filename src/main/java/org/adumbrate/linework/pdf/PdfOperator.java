package org.adumbrate.linework.pdf;

import java.io.IOException;

/** What an operator of a content stream does. */
@FunctionalInterface
interface PdfOperator {
    /** Carries it out. */
    void run(PdfOperands operands) throws IOException;
}
