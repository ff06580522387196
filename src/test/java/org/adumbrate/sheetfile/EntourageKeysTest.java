package org.adumbrate.sheetfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.sheetfile.reading.SheetFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Figures, planting and birds, and the floors and regions that they refer to. */
class EntourageKeysTest {
    private static final Look PLAIN = new Look(Srgb.WHITE, new Percent(100), Length.ofMillimetres(0.18), Srgb.BLACK);

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

    @Test
    void aFloorIsAnElevationOrMore() throws IOException {
        Sheet sheet = read("floors: { yard: 0, upper: { elevation: 3.35 m, outline: [[0, 0], [9, 0], [9, 9]] } }\n");
        assertThat(sheet.floors().get("yard")).isEqualTo(new Floor(new Metres(0), List.of()));
        Floor upper = sheet.floors().get("upper");
        assertThat(upper.elevation()).isEqualTo(new Metres(3.35));
        assertThat(upper.outline())
                .containsExactly(
                        new Polygon(List.of(new SheetPoint(0, 0), new SheetPoint(9, 0), new SheetPoint(9, 9))));
    }

    @Test
    void aRegionIsPolygonsOrAColour() throws IOException {
        Sheet sheet = read("""
                regions:
                  bed: [[0, 0], [9, 0], [9, 9]]
                  beds: [[[0, 0], [9, 0], [9, 9]], [[20, 0], [29, 0], [29, 9]]]
                  sky: { points: [[0, 0], [9, 0], [9, 9]] }
                  wall: { raster: materials.png, color: "#8040ff" }
                """);
        assertThat(sheet.regions().get("bed")).isEqualTo(sheet.regions().get("sky"));
        assertThat(sheet.regions().get("beds"))
                .isInstanceOfSatisfying(SheetRegion.ByPoints.class, beds -> assertThat(beds.points())
                        .hasSize(2));
        assertThat(sheet.regions().get("wall"))
                .isEqualTo(new SheetRegion.ByColor(
                        folder.resolve("materials.png"), new Srgb(0x80, 0x40, 0xff), 4, Optional.empty()));
    }

    @Test
    void aFigureNeedsAnOutlineAndAFootOnly() throws IOException {
        Sheet sheet = read("figures: [{ outline: walking, foot: [212, 188] }]\n");
        assertThat(sheet.figures())
                .containsExactly(new Figure(
                        new Outline.Shipped("walking"),
                        new SheetPoint(212, 188),
                        Optional.empty(),
                        Optional.empty(),
                        new Degrees(0),
                        false,
                        List.of(),
                        new OtherLook(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty())));
        assertThat(sheet.entourage()).isEqualTo(PLAIN);
        assertThat(sheet.figures().get(0).look().over(PLAIN)).isEqualTo(PLAIN);
    }

    @Test
    void anItemsLookIsLaidOverThatOfAll() throws IOException {
        Sheet sheet = desk.read(Desk.fullSheet()).sheet();
        Srgb grey = new Srgb(0x33, 0x33, 0x33);
        Look common = new Look(new Srgb(0xf8, 0xf8, 0xf8), new Percent(90), Length.ofMillimetres(0.13), grey);
        assertThat(sheet.entourage()).isEqualTo(common);
        assertThat(sheet.figures().get(1).look().over(common))
                .isEqualTo(new Look(
                        new Srgb(0xee, 0xee, 0xee),
                        new Percent(80),
                        Length.ofMillimetres(0.25),
                        new Srgb(0x22, 0x22, 0x22)));
        assertThat(sheet.planting().get("grasses").look().over(common))
                .isEqualTo(new Look(common.fill(), new Percent(60), common.outline(), grey));
    }

    @Test
    void plantingHasDefaultsForAllButOutlinesAndRegion() throws IOException {
        Sheet sheet = read("""
                regions: { bed: [[0, 0], [9, 0], [9, 9]] }
                planting: { grasses: { outlines: grass-tuft, region: bed } }
                """);
        Planting grasses = sheet.planting().get("grasses");
        assertThat(grasses.outlines()).containsExactly(new Outline.Shipped("grass-tuft"));
        assertThat(grasses.height()).isEmpty();
        assertThat(grasses.variation()).isEqualTo(new Percent(25));
        assertThat(grasses.spacing()).isEqualTo(new Metres(0.4));
        assertThat(grasses.seed()).isEqualTo(1);
        assertThat(grasses.behind()).isEmpty();

        Planting full = desk.read(Desk.fullSheet()).sheet().planting().get("grasses");
        assertThat(full.outlines())
                .containsExactly(
                        new Outline.Shipped("grass-tuft"), new Outline.Drawn(folder.resolve("figures/reed.SVG")));
        assertThat(full.region()).isEqualTo("bed");
        assertThat(full.floor()).contains("yard");
        assertThat(full.height()).contains(new Metres(0.6));
        assertThat(full.spacing()).isEqualTo(new Metres(0.35));
        assertThat(full.seed()).isEqualTo(3);
        assertThat(full.behind()).containsExactly("wall");
    }

    @Test
    void birdsHaveDefaultsForAllButOutlinesAndRegion() throws IOException {
        Sheet sheet = read("""
                regions: { sky: [[0, 0], [9, 0], [9, 9]] }
                birds: { flock: { outlines: [bird-gliding], region: sky } }
                """);
        Birds flock = sheet.birds().get("flock");
        assertThat(flock.count()).isEqualTo(7);
        assertThat(flock.wingspan()).isEqualTo(new Metres(0.6));
        assertThat(flock.distance()).isEqualTo(new DistanceRange(new Metres(25), new Metres(90)));
        assertThat(flock.seed()).isEqualTo(1);

        Birds full = desk.read(Desk.fullSheet()).sheet().birds().get("flock");
        assertThat(full.region()).isEqualTo("sky");
        assertThat(full.count()).isEqualTo(9);
        assertThat(full.wingspan()).isEqualTo(new Metres(0.55));
        assertThat(full.distance()).isEqualTo(new DistanceRange(new Metres(20), new Metres(95)));
    }

    @Test
    void anOutlineThatIsNotShippedIsToldWithTheNearest() throws IOException {
        SheetFile file = desk.read(Desk.completed("figures: [{ outline: wlaking, foot: [212, 188] }]\n"));
        assertThat(file.unknown("figures[0].outline", "outline", "wlaking", List.of("sitting", "walking")))
                .hasToString(desk.sheetFile() + ":1:22: no outline is called 'wlaking'; expected sitting or walking;"
                        + " did you mean 'walking'?");
    }

    /** The sketch of a whole sheet file in the design, as it stands. */
    @Test
    void theSketchOfTheDesignReadsWell() throws IOException {
        assertThat(desk.complaints(Desk.resource("sketch.sheet.yaml"))).isEmpty();
    }
}
