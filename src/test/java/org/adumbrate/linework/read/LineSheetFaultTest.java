package org.adumbrate.linework.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.adumbrate.fault.InputFault;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that cannot be used: one line each, naming the file, what is wrong and what to do. */
@Timeout(30)
class LineSheetFaultTest {
    @TempDir
    Path folder;

    @Test
    void aMissingFileAFolderAndAnEmptyFile() throws IOException {
        assertFault(folder.resolve("lines.pdf"), "does not exist");
        assertFault(folder, "is a folder");
        assertFault(Files.createFile(folder.resolve("empty.pdf")), "is empty");
    }

    @Test
    void anotherKindOfFileWhateverItsName() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.pdf"), "Lines to be drawn tomorrow.\n");
        assertFault(file, "is neither a PDF nor an SVG");
    }

    @Test
    void theKindIsToldByTheContent() throws IOException {
        Path pdf = pdf("0 0 m 9 9 l S");
        assertThat(LineSheets.read(Files.move(pdf, folder.resolve("lines.svg"))).strokes())
                .hasSize(1);
    }

    @Test
    void aPdfThatIsCutShort() throws IOException {
        byte[] whole = Files.readAllBytes(pdf("0 0 m 9 9 l S"));
        // behind the last stream, the cross-reference table, a tail without an end mark would do
        int table = new String(whole, StandardCharsets.ISO_8859_1).lastIndexOf("endstream");
        for (int length : new int[] {table, whole.length / 2, 200, 20}) {
            Path file = Files.write(folder.resolve("cut.pdf"), Arrays.copyOf(whole, length));
            assertFault(file, "is cut short");
        }
    }

    @Test
    void aPdfWithDamagedContent() throws IOException {
        byte[] data = Files.readAllBytes(pdf("0.123 0.456 m 9.78 9.1011 l S 12.13 14.15 m 16.17 18.19 l S"));
        String text = new String(data, StandardCharsets.ISO_8859_1);
        data[text.indexOf("stream", text.indexOf("FlateDecode")) + 20] ^= 0x10;
        assertFault(Files.write(folder.resolve("damaged.pdf"), data), "compressed content");
    }

    @Test
    void aPdfThatNeedsAPassword() throws IOException {
        assertFault(encrypted("secret"), "is encrypted and needs a password");
    }

    @Test
    void aPdfThatOpensWithoutItsPasswordIsRead() throws IOException {
        assertThat(LineSheets.read(encrypted("")).strokes()).hasSize(1);
    }

    @Test
    void aPdfWithoutLinesSaysWhatItHoldsInstead() throws IOException {
        assertFault(pdf("0 0 9 9 re f"), "shows no line, only 1 filled areas, texts or images");
        assertFault(pdf(""), "shows no line at all");
        assertFault(pdf("-9 -9 m -1 -1 l S"), "all 1 strokes lie outside the visible page of 25.4 x 25.4 mm");
        assertFault(pdf("5 5 9 9 re W n 30 30 m 40 30 l S"), "shows no line: clips or masks hide all 1 strokes");
        assertFault(
                pdf("5 5 9 9 re W n 30 30 m 40 30 l S -9 -9 m -1 -1 l S"),
                "clips or masks hide 1 strokes, and 1 lie outside the visible page");
    }

    @Test
    void aPdfWithoutPageOrWithAnEmptyOne() throws IOException {
        Path none = folder.resolve("none.pdf");
        try (PDDocument document = new PDDocument()) {
            document.save(none.toFile());
        }
        assertFault(none, "has no page");
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            sketch.page().setCropBox(new PDRectangle(100, 100, 50, 50));
            assertFault(sketch.draws("0 0 m 9 9 l S").saved(folder), "a sheet needs a positive width and height");
        }
    }

    @Test
    void contentThatMakesNoSense() throws IOException {
        assertFault(pdf("0 m 9 9 l S"), "an operator has 1 operands and needs 2");
        assertFault(pdf("/a 0 m 9 9 l S"), "not a number");
        assertFault(pdf("/NoSuchForm Do"), "NoSuchForm is missing");
        assertFault(pdf("/NoSuchSpace CS"), "NoSuchSpace");
    }

    @Test
    void aFormThatDrawsItselfWithoutEnd() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            COSStream form = sketch.form("/F Do /F Do", new double[] {0, 0, 72, 72}, new double[] {1, 0, 0, 1, 0, 0});
            sketch.with(COSName.XOBJECT, "F", form).draws("/F Do");
            assertFault(sketch.saved(folder), "draws forms that are nested deeper than 50 or drawn too often");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm'><path d='M0 0 9 9' stroke='red'>",
                "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm'><path d=M0/></svg>",
                "<?xml version='1.0'?>",
            })
    void xmlThatIsNotWellFormed(String text) throws IOException {
        assertFault(svg(text), "is not well-formed XML (line 1");
    }

    @Test
    void xmlThatIsNoSvg() throws IOException {
        assertFault(svg("<html/>"), "its root is <html> and not <svg>");
    }

    @Test
    void anSvgWithoutSizeOrWithoutLines() throws IOException {
        assertFault(svg("<svg xmlns='http://www.w3.org/2000/svg'/>"), "does not say how large its page is");
        assertFault(
                svg("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><rect width='9' height='9'/></svg>"),
                "shows no line, only 1 filled areas");
    }

    @Test
    void anSvgWhoseEntitiesLieOutsideOrGrowWithoutEnd() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "M0 0 9 9");
        assertFault(
                svg("<!DOCTYPE svg [<!ENTITY d SYSTEM '" + secret.toUri()
                        + "'>]><svg xmlns='http://www.w3.org/2000/svg'>&d;</svg>"),
                "refers to entities outside itself");
        StringBuilder bomb = new StringBuilder("<!DOCTYPE svg [<!ENTITY e0 'lines'>");
        for (int k = 1; k < 12; k++) {
            bomb.append("<!ENTITY e" + k + " '" + ("&e" + (k - 1) + ";").repeat(10) + "'>");
        }
        assertFault(
                svg(bomb + "]><svg xmlns='http://www.w3.org/2000/svg'><title>&e11;</title></svg>"),
                "entity expansions");
    }

    @Test
    void anSvgThatDrawsNothingButItself() throws IOException {
        assertFault(
                svg("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><g id='a'><use href='#a'/></g></svg>"),
                "shows no line at all; what uses itself is not drawn within itself, as in browsers: #a;");
    }

    private Path pdf(String content) throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            return sketch.draws(content).saved(folder);
        }
    }

    private Path encrypted(String password) throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            StandardProtectionPolicy policy = new StandardProtectionPolicy("owner", password, new AccessPermission());
            policy.setEncryptionKeyLength(128);
            sketch.document().protect(policy);
            return sketch.draws("0 0 m 9 9 l S").saved(folder);
        }
    }

    private Path svg(String text) throws IOException {
        return Files.writeString(Files.createTempFile(folder, "lines", ".svg"), text);
    }

    /** Fails unless reading fails as it should: in one line, and without a word on standard error. */
    private static void assertFault(Path file, String what) {
        PrintStream before = System.err;
        ByteArrayOutputStream talk = new ByteArrayOutputStream();
        System.setErr(new PrintStream(talk, true, StandardCharsets.UTF_8));
        try {
            assertThatThrownBy(() -> LineSheets.read(file))
                    .isInstanceOf(InputFault.class)
                    .hasMessageStartingWith(file + ": ")
                    .hasMessageContaining(what)
                    .hasMessageContaining("; ")
                    .hasMessageNotContaining("\n");
        } finally {
            System.setErr(before);
        }
        assertThat(talk.toString(StandardCharsets.UTF_8)).isEmpty();
    }
}
