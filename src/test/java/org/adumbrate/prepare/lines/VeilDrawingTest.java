package org.adumbrate.prepare.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.SheetsForTests;
import org.adumbrate.prepare.finding.Finding;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** What a sheet's veils by lines cover, against the exact crowns of exported trees. */
class VeilDrawingTest {
    private static final String EXPORT = "/org/adumbrate/linework/region/quay-shed-trees";

    @TempDir
    private Path folder;

    @BeforeEach
    void export() throws IOException {
        StringBuilder svg = new StringBuilder("""
                <svg xmlns="http://www.w3.org/2000/svg" width="420mm" height="297mm" viewBox="0 0 420 297">
                """);
        for (String line : text(EXPORT + ".txt").split("\n")) {
            String[] words = line.split(" ");
            String color = words[0].equals("own") ? "#008838" : "#404048";
            svg.append(String.format(
                    Locale.ROOT,
                    "<path fill='none' stroke='%s' d='M%s %sL%s %s'/>%n",
                    color,
                    words[1],
                    words[2],
                    words[3],
                    words[4]));
        }
        Files.writeString(folder.resolve("trees.svg"), svg.append("</svg>"));
    }

    @Test
    void aVeilOverTreesCoversTheirCrowns() throws IOException, Refusal {
        assertThat(overlap(veil("", ""))).isGreaterThan(0.99);
        assertThat(overlap(veil("", "trees: { color: '#008838', role: planting }")))
                .isGreaterThan(0.99);
    }

    @Test
    void stemsAreCoveredWhereThatIsAsked() throws IOException, Refusal {
        Region<SheetPoint> all = veil(", stems: true", "");
        assertThat(crowns().minus(all).area()).isLessThan(1);
        assertThat(overlap(all)).isLessThan(0.95);
        assertThat(overlap(veil(", stems: false", "walls: { color: '#008838', role: building }")))
                .isGreaterThan(0.99);
    }

    /** A narrow part of a wall or a pane is no stem. */
    @Test
    void whatIsNoPlantingIsCoveredWhole() throws IOException, Refusal {
        Region<SheetPoint> all = veil(", stems: true", "");
        for (String role : List.of("glass", "neighbour", "other")) {
            // shades as near as this are one colour
            Region<SheetPoint> covered = veil("", "panes: { color: '#018939', role: " + role + " }");
            assertThat(covered.area()).as(role).isEqualTo(all.area());
        }
    }

    @Test
    void linesOfAVeilAreDrawnByThePenOfNearlyItsColour() throws IOException, Refusal {
        List<Layer> layers = prepared("", "panes: { color: '#0a8838' }, green: { color: '#018939', width: 0.4 }")
                .layers();
        assertThat(layers.stream().map(Layer::name)).contains("green").doesNotContain("trees", "panes");
    }

    @Test
    void aVeilOverStemsAloneSaysSo() throws IOException, Refusal {
        Files.writeString(folder.resolve("trees.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="420mm" height="297mm" viewBox="0 0 420 297">
                <path fill="none" stroke="#008838" d="M50 50H54V150H50Z"/></svg>
                """);
        assertThat(prepared("", "").remarks())
                .extracting(Finding::text)
                .singleElement()
                .asString()
                .contains("stems: true");
        assertThat(veil(", stems: true", "").area()).isCloseTo(400, within(0.1));
    }

    private static double overlap(Region<SheetPoint> veil) {
        return veil.within(crowns()).area() / veil.union(crowns()).area();
    }

    private Region<SheetPoint> veil(String more, String pens) throws IOException, Refusal {
        Layer layer = prepared(more, pens).layers().stream()
                .filter(one -> one.name().equals("trees-fill"))
                .findFirst()
                .orElseThrow();
        return ((Mark.Area) layer.marks().get(0)).region();
    }

    private PreparedSheet prepared(String more, String pens) throws IOException, Refusal {
        Path sheet = Files.writeString(
                folder.resolve("a.sheet.yaml"), """
                size: A3 landscape
                lines: trees.svg
                pens: { building: { color: "#404048" }%s }
                veils: { trees: { color: "#008838"%s } }
                deliver: { svg: out/a.svg }
                """.formatted(pens.isEmpty() ? "" : ", " + pens, more));
        return SheetsForTests.prepared(sheet);
    }

    private static Region<SheetPoint> crowns() {
        try {
            return Region.ofPolygons(Space.SHEET, new WKTReader().read(text(EXPORT + ".wkt")));
        } catch (ParseException e) {
            throw new AssertionError(e);
        }
    }

    private static String text(String name) {
        try (InputStream in = VeilDrawingTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
