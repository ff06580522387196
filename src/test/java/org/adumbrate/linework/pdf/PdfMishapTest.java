package org.adumbrate.linework.pdf;

import static org.adumbrate.linework.read.PathAssertions.assertPath;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.ReadingNote;
import org.adumbrate.linework.read.LineSheets;
import org.adumbrate.linework.read.PdfSketch;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that other programs open: what makes no sense in them is passed over and told, and what draws is read. */
class PdfMishapTest {
    private static final String LINE = " 0 72 m 72 72 l S ";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0.5 cm",
                "frobnicate",
                "/NoSuchForm Do",
                "/NoSuchSpace CS",
                "(a) w",
                "(a (b) [1 (c] ) 2 ] TJ (d",
                "0 0 0 RG RG",
                "1 0 0 (x) 0 0 cm",
                "[1 2",
                "<< /A",
                "ID",
                ")",
            })
    void whatMakesNoSenseIsPassedOverCountedAndTold(String nonsense) throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            LineSheet sheet = sketch.draws(LINE + nonsense + "\n" + LINE + LINE).read(folder);
            assertThat(sheet.strokes()).hasSize(3);
            assertPath(sheet.strokes().get(2).path(), "M 0 0 L 25.4 0", 1e-3);
            assertThat(sheet.remarks()).singleElement().satisfies(remark -> {
                assertThat(remark.kind()).isEqualTo(ReadingNote.Kind.SKIPPED);
                assertThat(remark.told()).contains("no sense");
            });
        }
    }

    @Test
    void ofTooManyComponentsTheLastAreTheColour() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            LineSheet sheet = sketch.draws("[1 2 0 0 1 RG" + LINE + "7 8 1 0 0 rg 0 0 m 9 9 l S")
                    .read(folder);
            assertThat(sheet.strokes().get(0).color()).hasToString("#0000ff");
        }
    }

    @Test
    void whatIsNewToUsIsNoMistakeWhereTheFileSaysSo() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            LineSheet sheet = sketch.draws("BX 1 2 frobnicate EX 0 i /a MP /Perceptual ri" + LINE)
                    .read(folder);
            assertThat(sheet.remarks()).isEmpty();
        }
    }

    @Test
    void contentThatIsMostlyNonsenseIsRefused() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            Path file = sketch.draws(LINE + "frobnicate ".repeat(200)).saved(folder);
            assertThatThrownBy(() -> LineSheets.read(file))
                    .isInstanceOf(InputFault.class)
                    .hasMessageContaining("drawing instructions make no sense; the first: frobnicate is no operator");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"FlateDecode", "LZWDecode", "ASCII85Decode", "ASCIIHexDecode", "RunLengthDecode", ""})
    void streamsOfNoBytes(String filter) throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            COSArray contents = new COSArray();
            for (String bytes : new String[] {"", "\n", "\r\n"}) {
                COSStream empty = sketch.document().getDocument().createCOSStream();
                try (OutputStream out = empty.createRawOutputStream()) {
                    out.write(bytes.getBytes(StandardCharsets.ISO_8859_1));
                }
                if (!filter.isEmpty()) {
                    empty.setItem(COSName.FILTER, COSName.getPDFName(filter));
                }
                contents.add(empty);
            }
            contents.add(sketch.form(LINE, new double[4], new double[6]));
            sketch.page().getCOSObject().setItem(COSName.CONTENTS, contents);
            LineSheet sheet = sketch.read(folder);
            assertThat(sheet.strokes()).hasSize(1);
            assertThat(sheet.remarks()).isEmpty();
        }
    }

    @Test
    void aPartOfThePageThatIsMissingIsTold() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            COSArray contents = new COSArray();
            contents.add(COSNull.NULL);
            contents.add(sketch.form(LINE, new double[4], new double[6]));
            sketch.page().getCOSObject().setItem(COSName.CONTENTS, contents);
            LineSheet sheet = sketch.read(folder);
            assertThat(sheet.strokes()).hasSize(1);
            assertThat(sheet.remarks().get(0).told()).contains("a part of the page's content is missing");
        }
    }

    @Test
    void thePageWithLinesIsTaken() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            sketch.draws("BT (Cover) Tj ET 0 0 9 9 re f");
            sketch.document().addPage(new PDPage());
            addPage(sketch, 144, LINE);
            addPage(sketch, 288, LINE + LINE);
            LineSheet sheet = sketch.read(folder);
            assertThat(sheet.strokes()).hasSize(1);
            assertThat(sheet.page().widthMm()).isEqualTo(50.8);
            assertThat(sheet.pages()).isEqualTo(4);
            assertThat(sheet.remarks())
                    .containsExactly(new ReadingNote(
                            ReadingNote.Kind.PAGE, "pages 1 to 2 show no line, so page 3 of 4 is read"));
        }
    }

    @Test
    void aFirstPageWithLinesIsTakenWhateverFollows() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            sketch.draws(LINE);
            addPage(sketch, 144, LINE + LINE);
            assertThat(sketch.read(folder).remarks()).isEmpty();
        }
    }

    @Test
    void aTailThatIsMissingIsDispensable() throws IOException {
        for (String mark : List.of("%%EOF", "startxref", "trailer", "xref\n")) {
            String whole = written();
            Path file = Files.writeString(
                    folder.resolve("tail.pdf"),
                    whole.substring(0, whole.lastIndexOf(mark)),
                    StandardCharsets.ISO_8859_1);
            LineSheet sheet = LineSheets.read(file);
            assertThat(sheet.strokes()).as(mark).hasSize(1);
            assertThat(sheet.remarks().isEmpty()).as(mark).isEqualTo(mark.equals("%%EOF"));
        }
    }

    @Test
    void anObjectThatIsCutIsDispensableOnlyIfNoPageNamesIt() throws IOException {
        String whole = written();
        String notes = whole.substring(0, whole.indexOf("(A note")) + "(A no";
        assertThat(LineSheets.read(Files.writeString(folder.resolve("notes.pdf"), notes, StandardCharsets.ISO_8859_1))
                        .strokes())
                .hasSize(1);
        String lines = whole.substring(0, whole.indexOf("0 72 m")) + "0 7";
        Path file = Files.writeString(folder.resolve("lines.pdf"), lines, StandardCharsets.ISO_8859_1);
        assertThatThrownBy(() -> LineSheets.read(file))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("is cut short: the end mark of a PDF is missing, and object 4 with it");
    }

    /** As simple programs write it: plain objects, a table, a tail. */
    private static String written() {
        String[] objects = {
            "<< /Type /Catalog /Pages 2 0 R >>",
            "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
            "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 72 72] /Contents 4 0 R /Resources << >> >>",
            "<< /Length " + LINE.length() + " >>\nstream\n" + LINE + "\nendstream",
            "<< /Title (A note on the drawing) >>",
        };
        StringBuilder text = new StringBuilder("%PDF-1.4\n");
        StringBuilder table = new StringBuilder("xref\n0 6\n0000000000 65535 f \n");
        for (int k = 0; k < objects.length; k++) {
            table.append(String.format("%010d 00000 n %n", text.length()));
            text.append(k + 1).append(" 0 obj\n").append(objects[k]).append("\nendobj\n");
        }
        int at = text.length();
        return text + table.toString() + "trailer\n<< /Size 6 /Root 1 0 R /Info 5 0 R >>\nstartxref\n" + at
                + "\n%%EOF\n";
    }

    private static void addPage(PdfSketch sketch, float width, String content) throws IOException {
        PDPage page = new PDPage(new PDRectangle(width, 72));
        page.setContents(new PDStream(sketch.form(content, new double[4], new double[6])));
        sketch.document().addPage(page);
    }
}
