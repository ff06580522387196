package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import org.adumbrate.linework.clip.TooIntricateException;
import org.adumbrate.linework.page.StrokeCollector;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/**
 * Counts what a page draws without drawing it: forms (ISO 32000-1, 8.10) that draw each other ten times over make a billion
 * lines out of a kilobyte. Each form is looked at once, and counted as often as it is drawn.
 */
final class PdfExpansion {
    static final int DEEPEST_FORM = 50;
    static final int MOST_FORMS = 100_000;

    /** What is wrong with forms that go deeper; one that draws itself does so without end. */
    static final String TOO_DEEP = "draws forms that are nested deeper than " + DEEPEST_FORM + " or drawn too often";

    /** Content of forms that is drawn again; a line takes some 30 bytes. */
    private static final int MOST_BYTES_AGAIN = 50_000_000;

    private static final int LONGEST_NAME = 60;

    private final PdfForms forms;
    private final IdentityHashMap<COSStream, PdfTally> known = new IdentityHashMap<>();
    private final Set<COSStream> open = new HashSet<>();
    private double bytesOnce;

    private PdfExpansion(PdfForms forms) {
        this.forms = forms;
    }

    /**
     * Looks at a page before it is drawn.
     *
     * @throws TooIntricateException if it draws more than any drawing holds
     * @throws IOException if a form is damaged
     */
    static void require(byte[] content, COSDictionary resources, PdfForms forms) throws IOException {
        PdfTally all = new PdfExpansion(forms).tally(content, resources, PdfTally.NONE);
        if (all.strokes() > StrokeCollector.MOST_STROKES) {
            throw new TooIntricateException("draws more than " + StrokeCollector.MOST_STROKES + " strokes");
        }
    }

    /** What content draws, with what it is by itself. */
    private PdfTally tally(byte[] content, COSDictionary resources, PdfTally alone) throws IOException {
        PdfScan scan = PdfScan.of(content);
        PdfTally all = alone.plus(new PdfTally(0, scan.strokes(), 0));
        for (Map.Entry<String, Integer> drawn : scan.drawn().entrySet()) {
            COSDictionary objects = resources.getCOSDictionary(COSName.XOBJECT);
            COSName name = COSName.getPDFName(drawn.getKey());
            if (objects != null
                    && objects.getCOSDictionary(name) instanceof COSStream form
                    && COSName.FORM.equals(form.getCOSName(COSName.SUBTYPE))) {
                all = all.plus(ofForm(form, resources).drawn(drawn.getValue()));
                require(all, drawn.getKey());
            }
        }
        return all;
    }

    private PdfTally ofForm(COSStream form, COSDictionary outerResources) throws IOException {
        PdfTally found = known.get(form);
        if (found == null) {
            if (open.size() >= DEEPEST_FORM || !open.add(form)) {
                throw new TooIntricateException(TOO_DEEP);
            }
            byte[] content = forms.content(form);
            bytesOnce += content.length;
            COSDictionary own = form.getCOSDictionary(COSName.RESOURCES);
            found = tally(content, own == null ? outerResources : own, new PdfTally(content.length, 0, 0));
            open.remove(form);
            known.put(form, found);
        }
        return found;
    }

    private void require(PdfTally all, String name) {
        if (all.forms() > MOST_FORMS
                || all.bytes() - bytesOnce > MOST_BYTES_AGAIN
                || all.strokes() > StrokeCollector.MOST_STROKES) {
            String told = name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME) + "...";
            throw new TooIntricateException("draws more than " + MOST_FORMS + " forms, " + MOST_BYTES_AGAIN
                    + " bytes of them again, or " + StrokeCollector.MOST_STROKES + " strokes, at last by the form "
                    + told);
        }
    }
}
