package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.clip.TooIntricateException;
import org.adumbrate.linework.page.LibraryWords;
import org.adumbrate.linework.page.StrokeCollector;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;

/** Reads the first page of a PDF. */
public final class PdfSheetReader {
    private static final String AGAIN = "export it again, or copy it again from where it came";

    private PdfSheetReader() {}

    /**
     * Reads a line sheet.
     *
     * @throws InputFault if the file is not a whole, open PDF with lines on its first page
     */
    public static LineSheet read(Path file) throws InputFault {
        try {
            PdfLogging.silence();
            long end = PdfEnd.of(file)
                    .orElseThrow(() -> new InputFault(file, "is cut short: the end mark of a PDF is missing", AGAIN));
            PdfPacking.check(file);
            try (PdfBytes data = new PdfBytes(file, end);
                    PDDocument document = Loader.loadPDF(data)) {
                return read(file, document);
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

    private static LineSheet read(Path file, PDDocument document) throws IOException {
        if (document.getNumberOfPages() == 0) {
            throw new InputFault(file, "has no page", AGAIN);
        }
        PDPage page = document.getPage(0);
        PdfPageFrame frame = PdfPageFrame.of(page);
        StrokeCollector found = new StrokeCollector(file, frame.size());
        PdfVisibility layers = new PdfVisibility(
                Optional.ofNullable(document.getDocumentCatalog().getOCProperties()));
        PDResources resources = page.getResources();
        new PdfInterpreter(frame, layers, found)
                .runPage(PdfContent.of(page.getContentStreams()), resources == null ? new PDResources() : resources);
        return found.sheet(document.getNumberOfPages());
    }
}
