package org.adumbrate.prepare.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.linework.SheetPaths;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.finding.Finding.Severity;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.sheetfile.reading.SheetFileReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A cut that runs off the top of a sheet of 200 x 150 mm. */
class CutDrawingTest {
    @TempDir
    private Path folder;

    private CutDrawing cut(String lines) throws IOException {
        return cut(lines, "");
    }

    private CutDrawing cut(String lines, String others) throws IOException {
        Files.createFile(folder.resolve("lines.svg"));
        Path file = Files.writeString(folder.resolve("a.sheet.yaml"), """
                lines: lines.svg
                cut: { color: black }
                deliver: { preview: a.png }
                """);
        try (Run run = Memory.none().begin()) {
            return CutDrawing.of(
                    SheetFileReader.read(file).sheet().cut().orElseThrow(),
                    new SortedLines(
                            Map.of("building", LineSet.of(SheetPaths.of(others))),
                            LineSet.of(SheetPaths.of(lines)),
                            LineSet.of(List.of()),
                            List.of(),
                            List.of()),
                    new SheetSize(200, 150),
                    run);
        }
    }

    @Test
    void aWallThatRunsOffTheTopIsNoted() throws IOException {
        CutDrawing wall = cut("M 50 0 L 50 100 L 70 100 L 70 0");
        assertThat(wall.region().area()).isCloseTo(2000, within(1.0));
        assertThat(wall.findings())
                .containsExactly(new Finding(
                        Severity.NOTE,
                        "cut",
                        "cut: its lines run off the top of the sheet, and what takes up most of that edge is taken to be open:"
                                + " the cut has 20 of its 200 mm; if the wrong side is hatched, leave room above it"));
    }

    @Test
    void whatMayBeEitherSideIsWarnedOf() throws IOException {
        CutDrawing half = cut("M 120 0 L 120 150");
        assertThat(half.region().area()).isCloseTo(80 * 150, within(1.0));
        assertThat(half.findings()).singleElement().satisfies(found -> {
            assertThat(found.severity()).isEqualTo(Severity.WARNING);
            assertThat(found.text()).contains("the cut has 80 of its 200 mm; ");
        });
    }

    @Test
    void groundThatRunsOffTheOtherEdgesIsCertain() throws IOException {
        assertThat(cut("M 0 100 L 200 100").findings()).isEmpty();
    }

    @Test
    void linesThatItCoversAreToldWhereThereAreMost() throws IOException {
        // a room whose outline is not drawn, with a table and what is seen along the wall
        CutDrawing cut = cut(
                "M 20 20 L 120 20 L 120 120 L 20 120 L 20 20",
                "M 60 60 L 90 60 L 90 70 L 60 70 L 60 60 M 60 62 L 90 62 M 60 64 L 90 64 M 30 30 L 30 34 M 20.2 20 L 20.2 120");
        assertThat(cut.findings()).singleElement().satisfies(found -> {
            assertThat(found.severity()).isEqualTo(Severity.WARNING);
            assertThat(found.text()).startsWith("cut: it covers 144 mm of other lines, most of them about [");
            assertThat(found.at()).singleElement().satisfies(at -> {
                assertThat(at.x()).isBetween(60.0, 90.0);
                assertThat(at.y()).isBetween(60.0, 70.0);
            });
        });
    }

    @Test
    void aFewLinesThatRunThroughAreNoted() throws IOException {
        assertThat(cut("M 20 20 L 120 20 L 120 120 L 20 120 L 20 20", "M 0 65 L 150 65")
                        .findings())
                .singleElement()
                .satisfies(found -> assertThat(found.severity()).isEqualTo(Severity.NOTE));
    }

    @Test
    void linesAlongItsEdgeAndShortEndsAreNoSignOfARoom() throws IOException {
        assertThat(cut(
                                "M 20 20 L 120 20 L 120 120 L 20 120 L 20 20",
                                "M 20.3 20 L 20.3 120 M 60 20 L 60 25 M 0 60 L 20.4 60")
                        .findings())
                .isEmpty();
    }
}
