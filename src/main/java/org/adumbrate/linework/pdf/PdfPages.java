package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.ReadingNote;
import org.adumbrate.linework.page.LibraryWords;
import org.adumbrate.linework.page.StrokeCollector;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;

/** Goes through the pages of a PDF for the first that shows lines: a cover or an empty page may lie before it. */
final class PdfPages {
    /** A set of drawings has no more leaves before the first. */
    private static final int MOST_PAGES = 100;

    private static final String AGAIN = "export it again, or copy it again from where it came";

    private final Path file;
    private final PDDocument document;
    private final int pages;
    private final PdfVisibility layers;

    /** A page that was read. */
    private record Reading(Optional<LineSheet> sheet, InputFault fault) {}

    private PdfPages(Path file, PDDocument document) {
        this.file = file;
        this.document = document;
        this.pages = document.getNumberOfPages();
        this.layers = new PdfVisibility(
                Optional.ofNullable(document.getDocumentCatalog().getOCProperties()));
    }

    /**
     * Reads the first page that shows lines.
     *
     * @throws InputFault if none does; the fault is what the first page lacks
     * @throws IOException if it, or one before it, is damaged
     */
    static LineSheet read(Path file, PDDocument document) throws IOException {
        return new PdfPages(file, document).read();
    }

    private LineSheet read() throws IOException {
        if (pages == 0) {
            throw new InputFault(file, "has no page", AGAIN);
        }
        Optional<InputFault> first = Optional.empty();
        for (int k = 0; k < Math.min(pages, MOST_PAGES); k++) {
            Reading reading = read(document.getPage(k));
            if (reading.sheet().isPresent()) {
                return k == 0 ? reading.sheet().get() : later(reading.sheet().get(), k + 1);
            }
            first = first.or(() -> Optional.of(reading.fault()));
        }
        throw first.orElseThrow();
    }

    private LineSheet later(LineSheet sheet, int number) {
        String empty = number == 2 ? "page 1 shows no line" : "pages 1 to " + (number - 1) + " show no line";
        List<ReadingNote> remarks = new ArrayList<>(sheet.remarks());
        remarks.add(
                0, new ReadingNote(ReadingNote.Kind.PAGE, empty + ", so page " + number + " of " + pages + " is read"));
        return sheet.with(remarks);
    }

    private Reading read(PDPage page) throws IOException {
        PdfPageFrame frame;
        try {
            frame = PdfPageFrame.of(page);
        } catch (IllegalArgumentException e) {
            return new Reading(
                    Optional.empty(),
                    new InputFault(file, "cannot be read as a PDF (" + LibraryWords.of(e) + ")", AGAIN, e));
        }
        StrokeCollector found = new StrokeCollector(file, frame.size());
        PdfSheetMarks marks = new PdfSheetMarks(found);
        PdfScene scene =
                new PdfScene(frame.size(), layers, new PdfColors(), new PdfForms(), new PdfBudget(), new PdfSkips());
        PdfInterpreter interpreter = new PdfInterpreter(scene, frame.toPage(), marks);
        PDResources resources = page.getResources();
        interpreter.runPage(
                PdfContent.of(page.getCOSObject(), scene.skips()), resources == null ? new PDResources() : resources);
        PdfNotes notes = new PdfNotes(document, interpreter, scene, marks);
        notes.draw(page.getCOSObject());
        List<ReadingNote> remarks = Stream.of(scene.skips().remark(), notes.remark(), marks.halfShownRemark())
                .flatMap(Optional::stream)
                .toList();
        Optional<LineSheet> sheet = found.ifAny(pages).map(lines -> lines.with(remarks));
        String besides = scene.skips().remark().map(ReadingNote::told).orElse("");
        return new Reading(sheet, sheet.isPresent() ? null : found.noLine(besides));
    }
}
