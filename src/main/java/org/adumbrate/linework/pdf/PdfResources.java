package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Set;
import org.adumbrate.linework.clip.TooIntricateException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;

/**
 * Looks at a colour space before the library does, which believes what it states: how large its profile is, how many samples
 * its functions have.
 */
final class PdfResources {
    /** A colour space, its alternate, its functions, its profile: a dozen objects. */
    private static final int MOST_OBJECTS = 2000;

    /** The profiles of presses with the finest tables have some 4 MB. */
    private static final int MOST_BYTES = 1 << 24;

    private static final COSName SIZE = COSName.getPDFName("Size");

    private final Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Deque<COSBase> ahead = new ArrayDeque<>();

    private PdfResources() {}

    /** @throws IOException if a colour space, or a function in it, asks for more than any drawing's does */
    static void requireModest(COSBase colourSpace) throws IOException {
        PdfResources resources = new PdfResources();
        resources.meet(colourSpace);
        while (!resources.ahead.isEmpty()) {
            resources.check(resources.ahead.pop());
        }
    }

    private void meet(COSBase object) throws IOException {
        COSBase found = object instanceof COSObject reference ? reference.getObject() : object;
        boolean holdsOthers = found instanceof COSArray || found instanceof COSDictionary;
        if (holdsOthers && seen.add(found)) {
            ahead.push(found);
        }
        if (seen.size() > MOST_OBJECTS) {
            throw new TooIntricateException(
                    "has a colour space that consists of more than " + MOST_OBJECTS + " objects");
        }
    }

    private void check(COSBase object) throws IOException {
        if (object instanceof COSStream stream) {
            long bytes = PdfContent.of(stream, MOST_BYTES).length;
            requireSamples(stream, bytes);
        }
        if (object instanceof COSArray array) {
            for (COSBase item : array) {
                meet(item);
            }
        } else if (object instanceof COSDictionary dictionary) {
            for (COSBase item : dictionary.getValues()) {
                meet(item);
            }
        }
    }

    /** A sampled function (ISO 32000-1, 7.10.2) has the samples that its sizes state. */
    private static void requireSamples(COSDictionary function, long bytes) throws IOException {
        COSArray sizes = function.getCOSArray(SIZE);
        if (function.getInt(COSName.FUNCTION_TYPE, -1) != 0 || sizes == null) {
            return;
        }
        double samples = 1;
        for (int k = 0; k < sizes.size(); k++) {
            samples *= sizes.getObject(k) instanceof COSNumber size ? size.floatValue() : 1;
        }
        if (samples > 8.0 * bytes) {
            throw new IOException("a colour function lacks samples: its " + bytes + " bytes cannot hold "
                    + String.format(java.util.Locale.ROOT, "%.0f", samples));
        }
    }
}
