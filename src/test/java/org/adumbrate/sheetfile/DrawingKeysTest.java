package org.adumbrate.sheetfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.Srgb;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** How the lines are drawn: pens, clean-up, cut, profile, veils, the order of layers, and what else is delivered. */
class DrawingKeysTest {
    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void lay() throws IOException {
        desk = new Desk(folder);
    }

    private Sheet read(String text) throws IOException {
        return desk.read(Desk.completed(text)).sheet();
    }

    private static Length mm(double mm) {
        return Length.ofMillimetres(mm);
    }

    @ParameterizedTest
    @CsvSource({
        "cut, 0.7",
        "profile, 0.5",
        "building, 0.25",
        "furniture, 0.18",
        "paving, 0.13",
        "ground, 0.25",
        "planting, 0.13",
        "glass, 0.13",
        "neighbour, 0.13",
        "other, 0.25",
    })
    void aRoleGivesItsPenAWidth(String role, double widthMm) throws IOException {
        PenStyle pen = read("pens: { p: { color: black, role: " + role + " } }\n")
                .pens()
                .get("p");
        assertThat(pen.weight()).isEqualTo(mm(widthMm));
        PenStyle stated = read("pens: { p: { color: black, role: " + role + ", width: 0.35 } }\n")
                .pens()
                .get("p");
        assertThat(stated.weight()).isEqualTo(mm(0.35));
    }

    /** The series of line widths of ISO 128-2:2020. */
    @ParameterizedTest
    @EnumSource
    void theWidthsAreOfTheSeries(PenRole role) {
        assertThat(List.of(0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0))
                .contains(role.width().mm());
    }

    @Test
    void aPenHasCapsJoinsAndFading() throws IOException {
        PenStyle pen = desk.read(Desk.fullSheet()).sheet().pens().get("furniture");
        assertThat(pen.role()).isEqualTo(PenRole.FURNITURE);
        assertThat(pen.cap().line()).isEqualTo(LineCap.BUTT);
        assertThat(pen.join()).isEqualTo(LineJoin.MITER);
        assertThat(pen.fades()).contains(new Percent(50));
        PenStyle square = read("pens: { p: { color: black, cap: square, join: bevel } }\n")
                .pens()
                .get("p");
        assertThat(square.cap().line()).isEqualTo(LineCap.PROJECTING);
        assertThat(square.join()).isEqualTo(LineJoin.BEVEL);
    }

    @Test
    void linesAreCleanedUpUnlessSwitchedOff() throws IOException {
        CleanUpLimits usual = new CleanUpLimits(true, mm(0.05), mm(0.1), mm(0.2), mm(0.1));
        assertThat(read("resolution: 300\n").cleanUp()).isEqualTo(usual);
        assertThat(read("clean-up: true\n").cleanUp()).isEqualTo(usual);
        assertThat(read("clean-up: { shortest: 0, join: 0.3 }\n").cleanUp())
                .isEqualTo(new CleanUpLimits(true, mm(0.05), mm(0.3), mm(0), mm(0.1)));
        CleanUpLimits off = read("clean-up: false\n").cleanUp();
        assertThat(off).isEqualTo(new CleanUpLimits(false, mm(0), mm(0), mm(0), mm(0)));
        assertThat(read("clean-up: { on: false, clutter: 1 }\n").cleanUp()).isEqualTo(off);
    }

    @Test
    void aCutClosesGapsAndKeepsThinPartsVisible() throws IOException {
        Cut plain = read("cut: { color: black }\n").cut().orElseThrow();
        assertThat(plain.gap()).isEqualTo(mm(1));
        assertThat(plain.thinnest()).isEqualTo(mm(0.35));
        Cut full = desk.read(Desk.fullSheet()).sheet().cut().orElseThrow();
        assertThat(full.gap()).isEqualTo(mm(0.8));
        assertThat(full.thinnest()).isEqualTo(mm(0.5));
        assertThat(full.hatch().orElseThrow().crossing()).isTrue();
    }

    @Test
    void aProfileGoesAroundTheBuildingOrNamedPens() throws IOException {
        String pens = "pens: { a: { color: black, role: building }, b: { color: white } }\n";
        Sheet sheet = read(pens + "profile: 0.6 mm\n");
        Profile profile = sheet.profile().orElseThrow();
        assertThat(profile).isEqualTo(new Profile(mm(0.6), List.of(), Srgb.BLACK));
        assertThat(profile.pensOf(sheet.pens())).containsExactly("a");
        Profile named = read(pens + "profile: { pens: b }\n").profile().orElseThrow();
        assertThat(named).isEqualTo(new Profile(mm(0.5), List.of("b"), Srgb.BLACK));
        assertThat(named.pensOf(sheet.pens())).containsExactly("b");
    }

    @Test
    void aVeilClosesGapsAndMayBeEtched() throws IOException {
        Sheet sheet = read("veils: { trees: { lines: lines-trees.pdf, color: black, etch: {} } }\n");
        assertThat(sheet.veils().get("trees"))
                .isInstanceOfSatisfying(
                        Veil.ByLines.class, trees -> assertThat(trees.gap()).isEqualTo(mm(1)));
        assertThat(sheet.veils().get("trees").etch()).contains(new Hatch(new Degrees(45), mm(1.5), mm(0.13), false));
    }

    @Test
    void aVeilCoversStemsOrLeavesThemBare() throws IOException {
        String veil = "veils: { trees: { color: black%s } }\n";
        assertThat(stems(veil.formatted(""))).isEmpty();
        assertThat(stems(veil.formatted(", stems: true"))).contains(true);
        assertThat(stems(veil.formatted(", stems: false"))).contains(false);
        assertThat(desk.complaints(Desk.completed(veil.formatted(", stems: yes"))))
                .singleElement()
                .asString()
                .contains("true or false");
        assertThat(desk.complaints(Desk.completed("veils: { t: { points: [[1, 1], [2, 1], [2, 2]], stems: true } }\n")))
                .isNotEmpty();
    }

    private Optional<Boolean> stems(String text) throws IOException {
        return ((Veil.ByLines) read(text).veils().get("trees")).stems();
    }

    @Test
    void layersAreNamedInAnyOrder() throws IOException {
        assertThat(desk.read(Desk.fullSheet()).sheet().order()).containsExactly("entourage", "trees-fill", "profile");
        assertThat(read("order: [entourage, cut-hatch]\n").order()).containsExactly("entourage", "cut-hatch");
    }

    @Test
    void aDepthRenderIsScaledByTheHeightLinesWhereItsRangeIsLeftOut() throws IOException {
        DepthPass depth = read("passes: { depth: { file: depth.png } }\n")
                .passes()
                .depth()
                .orElseThrow();
        assertThat(depth.near()).isEmpty();
        assertThat(depth.far()).isEmpty();
        assertThat(desk.read(Desk.fullSheet())
                        .sheet()
                        .passes()
                        .depth()
                        .orElseThrow()
                        .far())
                .contains(new Metres(40));
    }

    @Test
    void aFlatSheetAndAReportAreDelivered() throws IOException {
        Deliver plain = read("deliver: { flat: out/flat.png, report: out/report.html }\n")
                .deliver();
        assertThat(plain.flat()).contains(new Deliver.Flat(folder.resolve("out/flat.png"), 8, Optional.empty()));
        assertThat(plain.report()).contains(new Deliver.Report(folder.resolve("out/report.html")));
        assertThat(desk.read(Desk.fullSheet()).sheet().deliver().flat())
                .contains(new Deliver.Flat(folder.resolve("out/flat.tif"), 8, Optional.of(9)));
    }
}
