package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.ReadingNote;
import org.adumbrate.linework.clip.TooIntricateException;
import org.adumbrate.linework.page.LibraryWords;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;

/** Reads the first page of a PDF that shows lines. */
public final class PdfSheetReader {
    private static final String AGAIN = "export it again, or copy it again from where it came";
    private static final String CUT_SHORT = "is cut short: the end mark of a PDF is missing";

    private PdfSheetReader() {}

    /**
     * Reads a line sheet.
     *
     * @throws InputFault if the file is not a whole, open PDF with lines on a page
     */
    public static LineSheet read(Path file) throws InputFault {
        try {
            PdfLogging.silence();
            PdfEnd.End end = PdfEnd.of(file).orElseThrow(() -> new InputFault(file, CUT_SHORT, AGAIN));
            PdfPacking.check(file);
            try (PdfBytes data = new PdfBytes(file, end.bytes());
                    PDDocument document = opened(file, data, end)) {
                LineSheet sheet = PdfPages.read(file, document);
                return end.isMarked() ? sheet : mended(sheet);
            }
        } catch (InputFault e) {
            throw e;
        } catch (InvalidPasswordException e) {
            throw new InputFault(file, "is encrypted and needs a password", "export it without one", e);
        } catch (TooIntricateException e) {
            throw new InputFault(file, e.getMessage(), "export fewer objects at a time", e);
        } catch (StackOverflowError e) {
            throw new InputFault(file, "cannot be read as a PDF: its objects are nested too deeply", AGAIN, e);
        } catch (OutOfMemoryError e) {
            // the library's own parsing is bounded by the file alone; what it held is free again by now
            throw new InputFault(file, "needs more memory than there is", "export fewer objects at a time", e);
        } catch (NoClassDefFoundError e) {
            // the library asks for another one where a file is encrypted for the owners of certificates, and only there
            throw new InputFault(file, "is encrypted and needs a certificate", "export it without encryption", e);
        } catch (IOException | RuntimeException e) {
            throw new InputFault(file, "cannot be read as a PDF (" + LibraryWords.of(e) + ")", AGAIN, e);
        }
    }

    /** Opens a file; one that has lost its end must hold everything that its pages name. */
    private static PDDocument opened(Path file, PdfBytes data, PdfEnd.End end) throws IOException {
        if (end.isMarked()) {
            return Loader.loadPDF(data);
        }
        PDDocument document;
        try {
            document = Loader.loadPDF(data);
        } catch (InvalidPasswordException e) {
            throw e;
        } catch (IOException e) {
            throw new InputFault(file, CUT_SHORT, AGAIN, e);
        }
        Optional<COSObjectKey> missing = PdfCompleteness.missing(document);
        if (missing.isPresent()) {
            document.close();
            throw new InputFault(
                    file, CUT_SHORT + ", and object " + missing.get().getNumber() + " with it", AGAIN);
        }
        return document;
    }

    private static LineSheet mended(LineSheet sheet) {
        List<ReadingNote> remarks = new ArrayList<>(sheet.remarks());
        remarks.add(new ReadingNote(
                ReadingNote.Kind.MENDED, "the end of the file is missing, but nothing that its pages name is"));
        return sheet.with(remarks);
    }
}
