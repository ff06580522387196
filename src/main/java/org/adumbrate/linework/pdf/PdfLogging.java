package org.adumbrate.linework.pdf;

import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Keeps the PDF library from talking on standard error of what it finds in a file; that is the reader's part. */
final class PdfLogging {
    /** Held, since a logger that nobody holds forgets its level. */
    private static final List<Logger> LOGGERS =
            List.of(Logger.getLogger("org.apache.pdfbox"), Logger.getLogger("org.apache.fontbox"));

    private PdfLogging() {}

    static void silence() {
        LOGGERS.forEach(logger -> logger.setLevel(Level.OFF));
    }
}
