package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSStream;

/** Runs a content stream within another. */
@FunctionalInterface
interface PdfInPlace {
    /**
     * Runs it, and leaves the state behind as it was.
     *
     * @param resources its own; if it has none, those at hand hold
     * @param enter makes of a copy of the state the one in which it begins
     * @throws IOException if it is damaged
     */
    void run(COSStream content, Optional<COSDictionary> resources, Consumer<PdfGraphicsState> enter) throws IOException;
}
