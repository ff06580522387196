package org.adumbrate.sheetfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.Frame;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.reading.SheetFile;
import org.adumbrate.sheetfile.reading.SheetFileReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetFileReaderTest {
    private static final String SMALLEST = "lines: lines.pdf\ndeliver: { drawing: out/drawing.pdf }\n";

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void lay() throws IOException {
        desk = new Desk(folder);
    }

    @Test
    void theSmallestSheetFileHasAllDefaults() throws IOException {
        Sheet sheet = desk.read(SMALLEST).sheet();
        assertThat(sheet.size()).isEmpty();
        assertThat(sheet.resolution()).isEqualTo(new PrintResolution(300));
        assertThat(sheet.lines()).containsExactly(new LineFile(folder.resolve("lines.pdf"), Fit.SCALE));
        assertThat(sheet.passes())
                .isEqualTo(new Passes(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
        assertThat(sheet.floors()).isEmpty();
        assertThat(sheet.figures()).isEmpty();
        assertThat(sheet.deliver().drawing())
                .contains(new Deliver.Drawing(folder.resolve("out").resolve("drawing.pdf")));
        assertThat(sheet.deliver().preview()).isEmpty();
    }

    @Test
    void passesHaveTheirOwnDefaults() throws IOException {
        Passes passes = desk.read(SMALLEST + """
                passes:
                  shadow: { file: shadow.jpg }
                  occlusion: { file: occlusion.png }
                  figure-shadow: { file: figures/shadows.png }
                """).sheet().passes();
        assertThat(passes.shadow().orElseThrow().opacity().percent()).isEqualTo(60);
        assertThat(passes.occlusion().orElseThrow().opacity().share()).isEqualTo(0.45);
        assertThat(passes.figureShadow().orElseThrow().opacity().percent()).isEqualTo(60);
        assertThat(passes.shadow().orElseThrow().white()).isEqualTo(White.MEASURED);
    }

    @Test
    void aPassSaysHowAndWhereItIsPrinted() throws IOException {
        PrintedPass shadow = full().passes().shadow().orElseThrow();
        assertThat(shadow.white()).isEqualTo(White.AS_IS);
        assertThat(shadow.tone().orElseThrow().points())
                .startsWith(new TonePoint(new Percent(0), new Percent(5)))
                .hasSize(3);
        assertThat(shadow.tint()).contains(new Srgb(0x20, 0x30, 0x40));
        Mask mask = shadow.mask().orElseThrow();
        assertThat(mask.inside())
                .singleElement()
                .satisfies(polygon -> assertThat(polygon.corners()).hasSize(4).contains(new SheetPoint(431.8, 279.4)));
        assertThat(mask.outside()).hasSize(2);
        SheetSize size = new SheetSize(431.8, 279.4);
        assertThat(shadow.frame().orElseThrow().on(size)).isEqualTo(size.frame());
        assertThat(full().passes()
                        .figureShadow()
                        .orElseThrow()
                        .frame()
                        .orElseThrow()
                        .on(size))
                .isEqualTo(new Frame(0, -10, 431.8, 299.4));
    }

    @Test
    void theModelIsInMetresAndTheSheetInMillimetres() throws IOException {
        Sheet sheet = full();
        assertThat(sheet.floors().keySet()).containsExactly("yard", "studio", "upper");
        assertThat(sheet.floors().get("studio").elevation().m()).isEqualTo(0.15);
        assertThat(sheet.floors().get("upper").elevation().m()).isCloseTo(11 * 0.3048, within(1e-12));
        Camera camera = sheet.camera().orElseThrow();
        assertThat(camera.focal()).contains(Length.ofMillimetres(260));
        assertThat(camera.fieldOfView()).isEmpty();
        assertThat(camera.eyeHeight()).contains(new Metres(4.25));
        assertThat(sheet.figures().get(1).foot()).isEqualTo(new SheetPoint(8.5 * 25.4, 188));
        assertThat(sheet.figures().get(0).turn().radians()).isCloseTo(-Math.PI / 12, within(1e-12));
    }

    @Test
    void pensKeepTheirOrderAndTheirDefaults() throws IOException {
        Sheet sheet = full();
        assertThat(sheet.pens().keySet()).containsExactly("section", "building", "furniture", "alignment");
        assertThat(sheet.pens().get("building"))
                .isEqualTo(new PenStyle(
                        new Srgb(10, 100, 200),
                        Optional.empty(),
                        Srgb.BLACK,
                        List.of(),
                        false,
                        PenRole.OTHER,
                        PenCap.ROUND,
                        LineJoin.ROUND,
                        Optional.empty()));
        assertThat(sheet.pens().get("building").weight()).isEqualTo(Length.ofMillimetres(0.25));
        PenStyle furniture = sheet.pens().get("furniture");
        assertThat(furniture.weight()).isEqualTo(Length.ofPoints(0.5));
        assertThat(furniture.ink()).isEqualTo(new Srgb(0x33, 0x33, 0x33));
        assertThat(furniture.dash()).extracting(Length::mm).containsExactly(3.0, 1.0, 0.5, 1.0);
        assertThat(sheet.pens().get("alignment").hidden()).isTrue();
    }

    @Test
    void aVeilLiesWithinLinesOrPointsOrARegion() throws IOException {
        Sheet sheet = full();
        assertThat(sheet.veils().get("trees"))
                .isEqualTo(new Veil.ByLines(
                        Optional.of(folder.resolve("lines-trees.pdf")),
                        new Srgb(0, 0xa0, 0),
                        Length.ofMillimetres(2),
                        Optional.of(true),
                        Srgb.WHITE,
                        new Percent(40),
                        Optional.of(new Hatch(
                                new Degrees(45), Length.ofMillimetres(1.5), Length.ofMillimetres(0.18), false))));
        assertThat(sheet.veils().get("glass")).isInstanceOfSatisfying(Veil.ByPoints.class, glass -> {
            assertThat(glass.points()).hasSize(1);
            assertThat(glass.opacity()).isEqualTo(new Percent(0.5));
            assertThat(glass.etch()).isEmpty();
        });
        assertThat(sheet.veils().get("next-door")).isInstanceOfSatisfying(Veil.ByRegion.class, wall -> {
            assertThat(wall.region()).isEqualTo("wall");
            assertThat(wall.etch().orElseThrow().spacing()).isEqualTo(Length.ofMillimetres(2));
        });
        Sheet own = desk.read(SMALLEST + "veils: { trees: { color: black } }\n").sheet();
        assertThat(own.veils().get("trees"))
                .isInstanceOfSatisfying(
                        Veil.ByLines.class, trees -> assertThat(trees.lines()).isEmpty());
    }

    @Test
    void theSunIsSaidInThreeWays() throws IOException {
        ShadowSample sample = new ShadowSample(new SheetPoint(10, 90), new SheetPoint(10, 60), new SheetPoint(40, 95));
        assertThat(full().sun())
                .contains(new Sun.ByAngles(new Degrees(190), new Degrees(47), new Degrees(24), List.of(sample)));
        assertThat(desk.read(SMALLEST + "sun: { place: [48.14, 11.58], at: 2026-06-21T15:00+02:00 }\n")
                        .sheet()
                        .sun())
                .contains(new Sun.ByTime(
                        new GeoPlace(new Degrees(48.14), new Degrees(11.58)),
                        OffsetDateTime.of(2026, 6, 21, 15, 0, 0, 0, ZoneOffset.ofHours(2)),
                        new Degrees(0),
                        List.of()));
        assertThat(desk.read(SMALLEST + "sun: { sample: { foot: [10, 90], head: [10, 60], tip: [40, 95] } }\n")
                        .sheet()
                        .sun())
                .contains(new Sun.BySample(List.of(sample), Optional.empty()));
        assertThat(desk.read(SMALLEST + """
                sun:
                  sample:
                    - { foot: [10, 90], head: [10, 60], tip: [40, 95] }
                    - { foot: [90, 90], head: [90, 60], tip: [120, 95] }
                  north: 24
                """).sheet().sun().orElseThrow().sample())
                .hasSize(2);
    }

    @Test
    void aDeliveryIsAFileOrAFileWithOptions() throws IOException {
        Deliver full = full().deliver();
        assertThat(full.underlay())
                .contains(new Deliver.Underlay(
                        folder.resolve("out/underlay.tif"), 16, Optional.of(6), false, ColorMode.GREY));
        assertThat(full.svg().orElseThrow().embedUnderlay()).isTrue();
        assertThat(full.preview().orElseThrow().width()).isEqualTo(1200);
        Deliver plain = desk.read("lines: lines.pdf\ndeliver: { underlay: u.tiff, preview: p.png }\n")
                .sheet()
                .deliver();
        assertThat(plain.underlay())
                .contains(new Deliver.Underlay(folder.resolve("u.tiff"), 8, Optional.empty(), true, ColorMode.AUTO));
        assertThat(plain.preview()).contains(new Deliver.Preview(folder.resolve("p.png"), 1600));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "17 x 11 in            | 431.8 | 279.4",
                "17x11in               | 431.8 | 279.4",
                "17 × 11 in            | 431.8 | 279.4",
                "17\" x 11\"           | 431.8 | 279.4",
                "17in x 11in           | 431.8 | 279.4",
                "431.8 x 279.4 mm      | 431.8 | 279.4",
                "42 x 29.7 cm          | 420   | 297",
                "011 x 017 in          | 279.4 | 431.8",
                "A3 landscape          | 420   | 297",
                "ANSI B landscape      | 431.8 | 279.4",
                "Arch D portrait       | 609.6 | 914.4",
            })
    void aSizeIsWrittenAsTheTradeWritesIt(String text, double widthMm, double heightMm) throws IOException {
        SheetSize size =
                desk.read(SMALLEST + "size: " + text + "\n").sheet().size().orElseThrow();
        assertThat(size.widthMm()).isCloseTo(widthMm, within(1e-9));
        assertThat(size.heightMm()).isCloseTo(heightMm, within(1e-9));
    }

    @Test
    void anyValueKnowsItsPlace() throws IOException {
        SheetFile file = desk.read(Desk.fullSheet());
        assertThat(file.place("size")).isEqualTo(new Place(2, 7));
        assertThat(file.place("lines[0].fit")).isEqualTo(new Place(5, 29));
        assertThat(file.place("passes.shadow")).as("a mapping below its key").isEqualTo(new Place(8, 3));
        assertThat(file.place("passes.shadow.tone[1][1]")).isEqualTo(new Place(12, 27));
        assertThat(file.place("pens.building.color")).isEqualTo(new Place(33, 22));
        assertThat(file.place("pens.building.width")).as("left out").isEqualTo(file.place("pens.building"));
        assertThat(file.place("figures[1].foot")).isEqualTo(new Place(44, 11));
        assertThat(file.place("deliver.figure-shadow.file")).isEqualTo(new Place(50, 18));
        assertThat(file.place("nowhere.at.all")).isEqualTo(new Place(1, 1));
        assertThat(file.complaint("figures[1].foot", "lies above the horizon"))
                .hasToString(desk.sheetFile() + ":44:11: lies above the horizon");
    }

    @Test
    void anAliasStandsForWhatItsAnchorHolds() throws IOException {
        Sheet sheet = desk.read(SMALLEST + """
                pens:
                  walls: &heavy { color: "#0a64c8", width: 0.5 }
                  roof:
                    <<: *heavy
                    color: "#c86400"
                """).sheet();
        assertThat(sheet.pens().get("roof").weight()).isEqualTo(Length.ofMillimetres(0.5));
        assertThat(sheet.pens().get("roof").color()).isEqualTo(new Srgb(0xc8, 0x64, 0));
    }

    @Test
    void numbersAreDecimalAndWordsAreWords() throws IOException {
        Sheet sheet = desk.read("""
                lines: lines.pdf
                resolution: 0300
                deliver: { preview: { file: p.png, width: 0100 } }
                """).sheet();
        assertThat(sheet.resolution().dpi()).isEqualTo(300);
        assertThat(sheet.deliver().preview().orElseThrow().width()).isEqualTo(100);
        assertThat(desk.read(SMALLEST + "floors: { no: 1e1, on: .5 m, 2: 3. }\n")
                        .sheet()
                        .floors())
                .containsEntry("no", new Floor(new Metres(10), List.of()))
                .containsEntry("on", new Floor(new Metres(0.5), List.of()))
                .containsEntry("2", new Floor(new Metres(3), List.of()));
    }

    @Test
    void pathsAreTakenFromTheFolderOfTheSheetFile() throws IOException, InputFault {
        Files.writeString(desk.sheetFile(), "lines: figures/../lines.pdf\ndeliver: { svg: ../drawing.svg }\n");
        SheetFile file = SheetFileReader.read(desk.sheetFile());
        assertThat(file.file()).isEqualTo(desk.sheetFile());
        assertThat(file.sheet().lines().get(0).file()).isEqualTo(folder.resolve("figures/../lines.pdf"));
        assertThat(file.sheet().deliver().svg().orElseThrow().file()).isEqualTo(folder.resolve("../drawing.svg"));
    }

    private Sheet full() throws IOException {
        return desk.read(Desk.fullSheet()).sheet();
    }
}
