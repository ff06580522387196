package org.adumbrate.prepare.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.fault.Refusal;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.reading.SheetFileReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets whose lines come in another rendering of the colours that the sheet file states. */
class TakenColorsTest {
    @TempDir
    private Path folder;

    private LineFiles files;
    private SortedLines sorted;

    @Test
    void theGreyOfAPensColourIsTakenAndThatIsSaid() throws IOException, Refusal {
        sort("walls: { color: '#404048' }\n  ground: { color: '#0060a8' }", "#404048", "#4b4b4b", "#4c4c4c", "#c80000");
        assertThat(sorted.byName().get("ground").paths()).hasSize(2);
        assertThat(told())
                .containsExactly(
                        "pens.ground: no stroke has the colour #0060a8; #4b4b4b (grey) is another rendering of it, and the"
                                + " 2 strokes of it are taken; if that is right, state color: \"#4b4b4b\"");
        assertThat(sorted.findings()).singleElement().satisfies(stray -> assertThat(stray.text())
                .startsWith("pens: none for #c80000"));
    }

    @Test
    void aColourThatIsThereIsTakenAlone() throws IOException, Refusal {
        sort("ground: { color: '#0060a8' }", "#0060a8", "#4b4b4b");
        assertThat(sorted.byName().get("ground").paths()).hasSize(1);
        assertThat(told()).isEmpty();
    }

    @Test
    void ofTwoRenderingsNeitherIsTaken() throws IOException, Refusal {
        sort("ground: { color: '#0060a8' }", "#4b4b4b", "#3979a8");
        assertThat(sorted.byName()).doesNotContainKey("ground");
        assertThat(told())
                .containsExactly(
                        "pens.ground: no stroke has the colour #0060a8; #4b4b4b (grey) and #3979a8 (CMYK) may each be"
                                + " another rendering of it, and neither is taken; state the one that is meant");
    }

    @Test
    void whatMayStandForTwoPensIsTakenForNeither() throws IOException, Refusal {
        sort("ground: { color: '#0060a8' }\n  walls: { color: '#4a4a60' }", "#4d4d4d");
        assertThat(sorted.byName()).isEmpty();
        assertThat(told()).hasSize(2);
        assertThat(told().get(0)).contains("or of what pens.walls states, and is not taken");
    }

    @Test
    void whatStandsForOnePenIsNotTakenForAnother() throws IOException, Refusal {
        sort("ground: { color: '#0060a8' }\n  walls: { color: '#4b4b4b' }", "#4b4b4b");
        assertThat(sorted.byName().keySet()).containsExactly("walls");
        assertThat(told()).isEmpty();
    }

    private List<String> told() {
        return files.findings().stream().map(Finding::text).toList();
    }

    private void sort(String pens, String... colors) throws IOException, Refusal {
        StringBuilder svg =
                new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 99 99' width='99mm'>");
        for (int k = 0; k < colors.length; k++) {
            svg.append("<path d='M0 " + (k + 1) + "H" + (90 - k) + "' stroke='" + colors[k] + "'/>");
        }
        Files.writeString(folder.resolve("lines.svg"), svg + "</svg>");
        Path file = Files.writeString(
                folder.resolve("a.sheet.yaml"),
                "lines: lines.svg\npens:\n  " + pens + "\ndeliver: { preview: a.png }\n");
        Sheet sheet = SheetFileReader.read(file).sheet();
        try (Run run = Memory.none().begin()) {
            files = LineFiles.read(sheet, run);
            sorted = SortedLines.of(sheet, files, run);
        }
    }
}
