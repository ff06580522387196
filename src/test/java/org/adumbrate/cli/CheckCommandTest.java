package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets of the demo's exports with one thing or many wrong. */
class CheckCommandTest {
    private static final String HEAD = """
            size: 17 x 11 in
            resolution: 150
            lines: lines.pdf
            deliver: { preview: out/preview.png }
            """;

    @TempDir
    private Path folder;

    private Path demo;

    @BeforeEach
    void copy() throws IOException {
        demo = DemoCopy.kilnYard(folder);
    }

    private Cli check(String sheet, String... more) throws IOException {
        Path file = Files.writeString(demo.resolve("a.sheet.yaml"), sheet);
        String[] args = new String[2 + more.length];
        args[0] = "check";
        args[1] = file.toString();
        System.arraycopy(more, 0, args, 2, more.length);
        return Cli.run(args);
    }

    @Test
    void theDemoMayBePrinted() {
        Cli run = Cli.run("check", demo.resolve("kiln-yard.sheet.yaml").toString());
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("shadow.jpg has 200 pixels per inch at this size, enlarged 1.5 times for 300")
                .contains("may be printed")
                .doesNotContain("warning");
        assertThat(demo.resolve("out")).doesNotExist();
    }

    @Test
    void hiddenLinesAndWhatIsNotDrawnAreNotesAndLinesWithoutAColourAWarning() throws IOException {
        String painted = "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm' viewBox='0 0 100 100'>"
                + "<path stroke='black' d='M20 50H60'/><path stroke='black' d='M20 60H60'/>"
                + "<rect x='10' y='10' width='80' height='80' fill='#eee' stroke='black'/>";
        Files.writeString(demo.resolve("painted.svg"), painted + "</svg>");
        String sheet = """
                size: 200 x 200 mm
                lines: painted.svg
                deliver: { preview: out/preview.png }
                """;
        Cli run = check(sheet);
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("painted.svg: areas painted over lines hide 2 strokes, 160 mm in all, which are not drawn")
                .contains("do  if lines are missed, export without fills")
                .contains("not drawn, as it is no line: 1 filled area within an outline (6400 mm²)");
        Files.writeString(demo.resolve("painted.svg"), painted + "<path stroke='url(#g)' d='M0 5H9'/></svg>");
        Cli fading = check(sheet);
        assertThat(fading.code()).isEqualTo(1);
        assertThat(fading.out())
                .contains("not drawn for want of a colour to sort by: 1 stroke in a gradient or pattern");
    }

    @Test
    void everyFindingSaysWhatWhereWhyAndWhatToDo() throws IOException {
        Cli run = check("""
                size: 863.6 x 558.8 mm
                resolution: 300
                lines: lines.pdf
                passes:
                  shadow: { file: shadow.jpg, opacity: 100, tint: "#300010" }
                  occlusion: { file: occlusion.png, opacity: 100, tone: [[0, 0], [100, 60]] }
                pens:
                  paving: { color: "#b07800", width: 0.04 mm }
                  building: { color: "#404048", width: 0.1 mm }
                  gone: { color: "#123456" }
                  furniture: { color: "#0060a8", hidden: true }
                cut: { color: "#000000", gap: 0.01 mm, hatch: { width: 0.07 mm } }
                deliver: { preview: out/preview.png }
                """);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out())
                .contains("1 error\n")
                .contains("a.sheet.yaml:8:11: pens.paving draws lines of 0.040 mm, a hairline")
                .contains("a.sheet.yaml:9:13: pens.building draws lines of 0.100 mm, thinner than the print minimum")
                .contains("a.sheet.yaml:10:9: pens.gone draws nothing")
                .contains("a.sheet.yaml:11:14: pens.furniture is hidden, and 4776 strokes with it")
                .contains("cut.hatch.width draws lines of 0.070 mm")
                .contains("58 ends meet nothing within 0.01 mm")
                .contains("shadow.jpg has 100 pixels per inch at this size, enlarged 3.0 times for 300")
                .contains("do  render it 6800 pixels wide or wider")
                .contains("pens: none for #785428")
                .containsPattern("\\d+ % of all line lies where the paper sends back less than a quarter of its light")
                .containsPattern("the underlay is coloured; its darkest tone makes some 2\\d\\d % of total ink")
                .contains("should be looked at before it is printed");
        assertThat(run.out()
                        .lines()
                        .filter(line -> line.startsWith("      why "))
                        .count())
                .isEqualTo(run.out()
                        .lines()
                        .filter(line -> line.startsWith("      do  "))
                        .count())
                .isEqualTo(run.out()
                        .lines()
                        .filter(line -> line.contains("a.sheet.yaml:") && line.startsWith("  "))
                        .count());
    }

    @Test
    void figuresAreLookedAt() throws IOException {
        Cli run = check(HEAD + """
                floors: { yard: { elevation: 0 m, outline: [[300, 200], [430, 200], [430, 240], [300, 240]] } }
                camera: { focal: 260 mm, principal-point: [214, 150.5], eye-height: 4.25 m }
                figures:
                  - { outline: standing, foot: [320, 228], stature: 2.4 m }
                  - { outline: walking, foot: [120, 220] }
                  - { outline: seated, foot: [500, 228] }
                """);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out())
                .contains("a.sheet.yaml:8:5: 'standing' is 2.40 m tall")
                .contains("[320.0, 228.0] mm")
                .contains("a.sheet.yaml:9:5: 'walking' stands outside the outline of floor 'yard'")
                .contains("a.sheet.yaml:10:5: 'seated' stands off the sheet");
    }

    @Test
    void whatABuildWouldRefuseIsAnErrorAndTheRestIsStillLookedAt() throws IOException {
        Cli run = check(HEAD + """
                floors: { yard: 0 m }
                camera: { focal: 260 mm, principal-point: [214, 150.5], eye-height: 4.25 m }
                figures: [{ outline: standing, foot: [320, 100] }]
                sun: { place: [48.1, 11.6], at: 2026-06-21T01:00+02:00 }
                pens: { building: { color: "#404048", width: 0.1 mm } }
                """);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out())
                .contains("2 errors")
                .contains("no point of floor 'yard' is seen there")
                .containsPattern("stands \\d+\\.\\d degrees below the horizon")
                .contains("pens.building draws lines of 0.100 mm");
    }

    @Test
    void aSheetThatNoPrinterKnowsIsANote() throws IOException {
        Cli run = check(HEAD.replace("17 x 11 in", "500 x 323.53 mm"));
        assertThat(run.out())
                .contains("a.sheet.yaml:1:7: the sheet is 500 x 323.53 mm, which is no paper of ISO 216, ANSI or Arch");
        assertThat(run.code()).isZero();
    }

    @Test
    void aLowSunIsAWarning() throws IOException {
        Cli run = check(HEAD + "sun: { azimuth: 90, altitude: 1.5 }\n");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("the sun stands 1.5 degrees high");
    }

    @Test
    void aPassThatDoesNotBelongIsAnError() throws IOException {
        BufferedImage blank = new BufferedImage(850, 550, BufferedImage.TYPE_BYTE_GRAY);
        ImageIO.write(blank, "png", demo.resolve("blank.png").toFile());
        Cli run = check(HEAD + "passes: { shadow: { file: blank.png } }\n");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("1 error").contains("blank.png: cannot be placed: it is blank");
    }

    @Test
    void machinesReadTheSame() throws IOException {
        Cli run = check(HEAD + "pens: { building: { color: \"#404048\", width: 0.1 mm } }\n", "--json", "-");
        JsonNode json = new ObjectMapper().readTree(run.out());
        assertThat(json.get("passes").asBoolean()).isFalse();
        JsonNode thin = json.get("findings").get(0);
        assertThat(json.get("findings").findValuesAsText("key")).contains("pens.building", "pens");
        assertThat(thin.get("severity").asText()).isEqualTo("warning");
        assertThat(thin.has("line") && thin.has("why") && thin.has("remedy") && thin.has("atMm"))
                .isTrue();
    }
}
