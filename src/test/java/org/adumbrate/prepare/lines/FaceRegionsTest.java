package org.adumbrate.prepare.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.SheetsForTests;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFileReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet of 120 x 80 mm with a window of two panes and a post between them, a bed that does not quite close, and a chair's line across it. */
class FaceRegionsTest {
    private static final String WINDOW = "M10 10H50V30H10Z M29 10V30 M31 10V30";
    private static final String BED = "M60.6 60H100V75H60V60";
    private static final String CHAIR = "M80 55V79";

    @TempDir
    private Path folder;

    @BeforeEach
    void export() throws IOException {
        draw(WINDOW + " " + BED);
    }

    private void draw(String building) throws IOException {
        Files.writeString(folder.resolve("lines.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="80mm" viewBox="0 0 120 80">
                  <path fill="none" stroke="#404048" d="%s"/>
                  <path fill="none" stroke="#0060a8" d="%s"/>
                </svg>
                """.formatted(building, CHAIR));
    }

    private Path sheet(String more) throws IOException {
        Path file = folder.resolve("window.sheet.yaml");
        String pens = more.contains("pens:")
                ? ""
                : "pens: { walls: { color: '#404048' }, chairs: { color: '#0060a8', role: furniture } }\n";
        return Files.writeString(file, "lines: lines.svg\n" + pens + "deliver: { drawing: out/window.pdf }\n" + more);
    }

    private PreparedSheet prepared(String more) throws IOException, Refusal {
        return SheetsForTests.prepared(sheet(more));
    }

    private KnownRegion region(String fields) throws IOException, Refusal {
        return region(prepared("regions: { it: { " + fields + " } }"));
    }

    private static KnownRegion region(PreparedSheet sheet) {
        return sheet.drawing().orElseThrow().regions().byName().get("it");
    }

    private List<Finding> findings(String fields) throws IOException, Refusal {
        return prepared("regions: { it: { " + fields + " } }").remarks().stream()
                .filter(finding -> finding.key().startsWith("regions"))
                .toList();
    }

    private static Region<SheetPoint> rectangle(double left, double top, double right, double bottom) {
        return Region.rectangle(Space.SHEET, left, top, right, bottom);
    }

    private static void covers(Region<SheetPoint> found, Region<SheetPoint> expected) {
        assertThat(found.within(expected).area() / found.union(expected).area()).isGreaterThan(0.999);
    }

    @Test
    void aPostBeforeAPaneIsLeftOut() throws IOException, Refusal {
        Region<SheetPoint> panes = region("faces: [[20, 20], [40, 20]]").region();
        covers(panes, rectangle(10, 10, 29, 30).union(rectangle(31, 10, 50, 30)));
        // by lines that the post is not drawn with, one point says all of it
        draw("M10 10H50V30H10Z");
        covers(region("faces: [[20, 20]], of: [walls]").region(), rectangle(10, 10, 50, 30));
    }

    @Test
    void gapsAreClosedAsForVeils() throws IOException, Refusal {
        String left = "faces: [[70, 70]]";
        covers(region(left).region(), rectangle(60, 60, 80, 75));
        assertThat(region(left + ", gap: 0.2").region().area()).isGreaterThan(5000);
    }

    @Test
    void onlyStatedLinesBoundWhereSomeAreStated() throws IOException, Refusal {
        covers(region("faces: [[70, 70]], of: [walls]").region(), rectangle(60, 60, 100, 75));
        assertThat(region("faces: [[70, 70]], of: [chairs]").region().area()).isCloseTo(120 * 80, within(0.1));
    }

    @Test
    void hiddenLinesBoundWhereTheyAreStated() throws IOException, Refusal {
        String pens = "pens: { walls: { color: '#404048' }, chairs: { color: '#0060a8', hidden: true } }\n";
        covers(region(prepared(pens + "regions: { it: { faces: [[70, 70]] } }")).region(), rectangle(60, 60, 100, 75));
        covers(
                region(prepared(pens + "regions: { it: { faces: [[70, 70]], of: [walls, chairs] } }"))
                        .region(),
                rectangle(60, 60, 80, 75));
    }

    @Test
    void linesWithoutAPenBoundAsTheyAreDrawn() throws IOException, Refusal {
        covers(
                region(prepared("pens: { walls: { color: '#404048' } }\nregions: { it: { faces: [[70, 70]] } }"))
                        .region(),
                rectangle(60, 60, 80, 75));
    }

    @Test
    void theCutBoundsToo() throws IOException, Refusal {
        PreparedSheet sheet = prepared("""
                pens: { chairs: { color: '#0060a8' } }
                cut: { color: '#404048' }
                regions: { it: { faces: [[70, 70]], of: [cut] } }
                """);
        covers(region(sheet).region(), rectangle(60, 60, 100, 75));
    }

    /** The memory is that of one program that runs on; what has not changed is the same object. */
    @Test
    void aFaceFollowsItsLines() throws IOException, Refusal {
        Path file = sheet("regions: { it: { faces: [[20, 20]] } }");
        try (Memory memory = Memory.inMemory()) {
            KnownRegion before = region(made(file, memory));
            covers(before.region(), rectangle(10, 10, 29, 30));
            assertThat(region(made(file, memory)).region()).isSameAs(before.region());
            draw(WINDOW.replace("M29 10V30", "M25 10V30") + " " + BED);
            KnownRegion after = region(made(file, memory));
            covers(after.region(), rectangle(10, 10, 25, 30));
            assertThat(after.content()).isNotEqualTo(before.content());
            sheet("regions: { it: { faces: [[40, 20]] } }");
            covers(region(made(file, memory)).region(), rectangle(31, 10, 50, 30));
            sheet("regions: { it: { faces: [[70, 70]], gap: 0.1 } }");
            assertThat(region(made(file, memory)).region().area()).isGreaterThan(5000);
        }
    }

    private static PreparedSheet made(Path file, Memory memory) throws IOException, Refusal {
        try (Run run = memory.begin()) {
            return PreparedSheet.of(SheetFileReader.read(file), run, new StageClock(StageClock.Listener.SILENT));
        }
    }

    @Test
    void aVeilLiesOverItsFaces() throws IOException, Refusal {
        PreparedSheet sheet = prepared("veils: { pane: { faces: [[20, 20]], opacity: 30 } }");
        Mark mark = sheet.layers().stream()
                .flatMap(layer -> layer.marks().stream())
                .filter(one -> one.key().equals("veils.pane"))
                .findFirst()
                .orElseThrow();
        covers(((Mark.Area) mark).region(), rectangle(10, 10, 29, 30));
    }

    @Test
    void aFloorIsSeenInItsFaces() throws IOException, Refusal {
        PreparedSheet sheet =
                prepared("floors: { bed: { elevation: 0 m, faces: [[70, 70]], of: [walls] }, yard: 0 m }");
        var floors = sheet.drawing().orElseThrow().regions().floors();
        assertThat(floors).containsOnlyKeys("bed");
        covers(floors.get("bed").region(), rectangle(60, 60, 100, 75));
    }

    @Test
    void whatStandsBeforeAPersonHidesIt() throws IOException, Refusal {
        String scene = """
                floors: { yard: 0 m }
                camera: { focal: 90 mm, principal-point: [60, 30], eye-height: 1.6 m }
                regions: { before: { faces: [[70, 70]], of: [walls] } }
                figures: [{ outline: standing, foot: [70, 66]%s }]
                planting: { bed: { outlines: grass-tuft, region: before } }
                """;
        Region<SheetPoint> bed = rectangle(60, 60, 100, 75);
        assertThat(figure(prepared(scene.formatted(""))).within(bed).area()).isGreaterThan(1);
        PreparedSheet hidden = prepared(scene.formatted(", behind: [before]"));
        assertThat(figure(hidden).within(bed).area()).isLessThan(0.01);
        assertThat(figure(hidden).area()).isGreaterThan(1);
        assertThat(hidden.layers())
                .filteredOn(layer -> layer.name().equals("bed"))
                .isNotEmpty();
    }

    private static Region<SheetPoint> figure(PreparedSheet sheet) {
        assertThat(sheet.troubles()).isEmpty();
        return Region.union(
                Space.SHEET,
                sheet.layers().stream()
                        .map(Layer::marks)
                        .flatMap(List::stream)
                        .filter(mark -> mark.key().startsWith("figures[0]") && mark instanceof Mark.Area)
                        .map(mark -> ((Mark.Area) mark).region())
                        .toList());
    }

    @Test
    void aPointInAFaceOfItsOwnIsNoFinding() throws IOException, Refusal {
        assertThat(findings("faces: [[20, 20], [40, 20]]")).isEmpty();
    }

    @Test
    void aPointOnALineIsFound() throws IOException, Refusal {
        assertThat(findings("faces: [[20, 20], [29, 20]]")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Finding.Severity.WARNING);
            assertThat(finding.key()).isEqualTo("regions.it.faces[1]");
            assertThat(finding.text())
                    .isEqualTo("regions.it.faces[1]: [29, 20] lies on a line; move it into the face that is meant");
            assertThat(finding.at()).containsExactly(new SheetPoint(29, 20));
        });
    }

    @Test
    void pointsThatNoLinePartsAnyMoreAreFound() throws IOException, Refusal {
        draw("M10 10H50V30H10Z " + BED);
        assertThat(findings("faces: [[20, 20], [40, 20]]")).singleElement().satisfies(finding -> {
            assertThat(finding.key()).isEqualTo("regions.it.faces[1]");
            assertThat(finding.text()).contains("lies in the face of [20, 20]");
        });
    }

    @Test
    void aFaceThatNoLineClosesIsFound() throws IOException, Refusal {
        draw("M10 10H50V30 " + BED);
        assertThat(findings("faces: [[20, 20]]")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Finding.Severity.WARNING);
            assertThat(finding.text())
                    .contains("% of the sheet")
                    .contains("runs off the sheet")
                    .contains("write area: ");
        });
        // what runs off the sheet and is no more than a corner of it may be meant
        draw("M0 30H30V0 " + BED);
        assertThat(findings("faces: [[20, 20]]")).singleElement().satisfies(finding -> assertThat(finding.severity())
                .isEqualTo(Finding.Severity.NOTE));
        assertThat(findings("faces: [[20, 20]], area: 900")).isEmpty();
    }

    @Test
    void aFaceOfAnotherSizeThanTheChosenOneIsFound() throws IOException, Refusal {
        String chosen = "faces: [[20, 20]], area: 380 mm2";
        assertThat(findings(chosen)).isEmpty();
        draw(WINDOW.replace("M29 10V30", "M27 10V30").replace("M31 10V30", "M28 10V30"));
        assertThat(findings(chosen)).isEmpty();
        draw("M10 10H50V30H10Z");
        assertThat(findings(chosen)).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Finding.Severity.WARNING);
            assertThat(finding.key()).isEqualTo("regions.it.area");
            assertThat(finding.text())
                    .contains("cover 800 mm2")
                    .contains("covered 380 mm2")
                    .endsWith("write area: 800 mm2");
        });
    }

    @Test
    void aPointOffTheSheetIsAComplaintWithItsPlace() throws IOException, Refusal {
        Path file = sheet("regions: { it: { faces: [[20, 20], [20, 90]] } }");
        PreparedSheet sheet = SheetsForTests.prepared(file);
        assertThat(sheet.troubles()).hasSize(1);
        assertThatThrownBy(sheet::orRaise)
                .isInstanceOf(SheetFileFault.class)
                .hasMessageContaining(file + ":4:36: [20, 90] lies off the sheet");
    }
}
