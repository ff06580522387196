package org.adumbrate.linework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.read.LineSheets;
import org.adumbrate.linework.read.PdfSketch;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Drawings that a few characters make huge are refused before they are drawn. The bound of time is for a hang: drawing them, as
 * far as the other limits let it, took over half a minute.
 */
@Timeout(value = 20, unit = TimeUnit.SECONDS)
class ExpansionTest {
    private static final String LINE = "<path d='M0 0 9 9' stroke='red'/>";
    private static final double[] BOX = {0, 0, 72, 72};
    private static final double[] UPRIGHT = {1, 0, 0, 1, 0, 0};

    @TempDir
    Path folder;

    @Test
    void aSymbolUsedAMillionTimes() throws IOException {
        assertRefused(
                svg("<symbol id='tree'>" + LINE + "</symbol>" + "<use href='#tree'/>".repeat(1_000_000)),
                "draws more than 300000 elements",
                "by <use>, at last of #tree (line 1)");
        assertRefused(svg("<use href='#later'/>".repeat(400_000) + "<g id='later'/>"), "at last of #later;");
    }

    @Test
    void symbolsThatUseEachOtherTenTimesOver() throws IOException {
        StringBuilder text = new StringBuilder("<defs>\n<g id='a0'>" + LINE + "</g>\n");
        for (int k = 1; k < 10; k++) {
            text.append("<g id='a" + k + "'>" + ("<use href='#a" + (k - 1) + "'/>").repeat(10) + "</g>\n");
        }
        assertRefused(svg(text + "</defs><use href='#a9'/>"), "draws more than 300000 elements", "#a4 (line 6)");
    }

    /** Each of a dozen uses all others, so that there are 12! ways through them. */
    @Test
    void symbolsThatUseEachOtherInCircles() throws IOException {
        StringBuilder text = new StringBuilder();
        for (int k = 0; k < 12; k++) {
            text.append("<g id='a" + k + "'>");
            for (int other = 0; other < 12; other++) {
                text.append("<use href='#a" + other + "'/>");
            }
            text.append("</g>");
        }
        assertRefused(svg(text.toString()), "takes more than 100000000 characters to draw");
    }

    @Test
    void aLongPathUsedManyTimes() throws IOException {
        String path = "<path id='wall' stroke='red' d='M0 0" + " L9 9 8 7".repeat(10_000) + "'/>";
        assertRefused(svg("<g>" + path + "</g>" + "<use href='#wall'/>".repeat(1000)), "or 30000000 characters");
    }

    @Test
    void manyUsesThatFitAreDrawn() throws IOException {
        String symbols = "<symbol id='tree'>" + LINE.repeat(10) + "</symbol>" + "<use href='#tree'/>".repeat(2000);
        assertThat(LineSheets.read(svg(symbols)).strokes()).hasSize(20_000);
        assertThat(LineSheets.read(svg(LINE + "<defs><g id='a'><use href='#a'/></g></defs>"))
                        .strokes())
                .as("what is not drawn may use itself")
                .hasSize(1);
    }

    @Test
    void aFormDrawnAMillionTimes() throws IOException {
        assertRefused(pdf("/F0 Do ".repeat(1_000_000), "0 0 m 9 9 l S"), "draws more than 100000 forms", "the form F0");
    }

    @Test
    void formsThatDrawEachOtherTenTimesOver() throws IOException {
        String[] forms = new String[10];
        forms[0] = "0 0 m 9 9 l S";
        for (int k = 1; k < forms.length; k++) {
            forms[k] = ("/F" + (k - 1) + " Do ").repeat(10);
        }
        assertRefused(pdf("/F9 Do", forms), "draws more than 100000 forms", "at last by the form F4");
    }

    @Test
    void aLongFormDrawnManyTimes() throws IOException {
        assertRefused(pdf("/F0 Do ".repeat(1000), "0 0 9 9 re f ".repeat(20_000)), "50000000 bytes of them again");
        assertRefused(pdf("/F0 Do ".repeat(1000), "0 0 m 9 9 l S ".repeat(2000)), "or 1000000 strokes");
    }

    @Test
    void manyFormsThatFitAreDrawn() throws IOException {
        LineSheet sheet = LineSheets.read(pdf("/F0 Do /F1 Do ".repeat(500), "0 0 m 9 9 l S", "/F0 Do (Do) S"));
        assertThat(sheet.strokes()).hasSize(1000);
    }

    private Path svg(String content) throws IOException {
        return Files.writeString(
                folder.resolve("lines.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm'>" + content + "</svg>");
    }

    /** A page with forms F0, F1 ... that all know each other. */
    private Path pdf(String content, String... forms) throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            COSDictionary objects = new COSDictionary();
            COSDictionary resources = new COSDictionary();
            resources.setItem(COSName.XOBJECT, objects);
            for (int k = 0; k < forms.length; k++) {
                COSStream form = sketch.form(forms[k], BOX, UPRIGHT);
                form.setItem(COSName.RESOURCES, resources);
                objects.setItem(COSName.getPDFName("F" + k), form);
            }
            sketch.page().getCOSObject().setItem(COSName.RESOURCES, resources);
            return sketch.draws(content).saved(folder);
        }
    }

    private static void assertRefused(Path file, String... words) {
        assertThatThrownBy(() -> LineSheets.read(file))
                .isInstanceOf(InputFault.class)
                .hasMessageStartingWith(file + ": ")
                .hasMessageContainingAll(words);
    }
}
