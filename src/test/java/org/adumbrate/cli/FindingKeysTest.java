package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Findings name the item of the sheet file that they are about. */
class FindingKeysTest {
    private static final String HEAD = """
            size: 17 x 11 in
            resolution: 50
            lines: lines.pdf
            """;

    @TempDir
    private Path folder;

    private Path demo;

    @BeforeEach
    void copy() throws IOException {
        demo = DemoCopy.kilnYard(folder);
    }

    private Path sheet(String more) throws IOException {
        return Files.writeString(
                demo.resolve("a.sheet.yaml"), HEAD + more + "deliver: { preview: out/a.png }\nclean-up: false\n");
    }

    /** Keys and texts of the findings of a build, as {@code key | text}. */
    private List<String> built(String more, String... options) throws IOException {
        List<String> args = new ArrayList<>(
                List.of("build", sheet(more).toString(), "--only", "preview", "--json", "-", "--quiet"));
        args.addAll(List.of(options));
        Cli run = Cli.run(args.toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isZero();
        List<String> findings = new ArrayList<>();
        for (JsonNode finding : new ObjectMapper().readTree(run.out()).get("findings")) {
            assertThat(finding.fieldNames()).toIterable().containsExactly("severity", "key", "text");
            findings.add(
                    finding.get("key").asText() + " | " + finding.get("text").asText());
        }
        return findings;
    }

    private static void assertOne(List<String> findings, String start) {
        assertThat(findings).filteredOn(finding -> finding.startsWith(start)).hasSize(1);
    }

    @Test
    void linesVeilsAndTheCutAreNamed() throws IOException {
        List<String> findings = built("""
                pens: { building: { color: "#404048", role: building } }
                cut: { color: "#123456" }
                veils:
                  pane:  { points: [[500, 10], [510, 10], [510, 20]] }
                  trees: { color: "#ff0000" }
                regions: { far: [[900, 900], [910, 900], [910, 910]] }
                """);
        assertOne(findings, "pens | pens: none for #0060a8");
        assertOne(findings, "cut | cut: no line has the colour #123456");
        assertOne(findings, "veils.trees | veils: 'trees' covers nothing");
    }

    @Test
    void theFigureThatIsNotSeenIsNamedAndWhatIsNotSaidOfTheSceneToo() throws IOException {
        List<String> findings = built("""
                floors: { yard: 0 m }
                camera: { principal-point: [214, 150.5], eye-height: 4.25 m }
                figures:
                  - { outline: standing, foot: [334.8, 228.3], floor: yard }
                  - { outline: walking,  foot: [900, 240],     floor: yard }
                """);
        assertOne(findings, "figures[1] | figures: nothing is seen of 'walking'");
        assertOne(findings, "camera | the focal length is not known");
        assertOne(findings, "sun | sun: not stated");
    }

    @Test
    void passesAndHeightLinesAreNamedThoughTheirTextsBeginWithAFile() throws IOException {
        List<String> findings = built("""
                passes:
                  shadow: { file: shadow.jpg, opacity: 60 }
                  depth:  { file: depth.png, near: 12 m, far: 45 m }
                floors:  { yard: 0 m }
                heights: { lines: lines-people-height.pdf, color: "#abcdef", height: 1.65 m }
                camera:  { focal: 260 mm, principal-point: [214, 150.5], eye-height: 4.25 m }
                figures:
                  - { outline: standing, foot: [334.8, 228.3], floor: yard }
                """, "--dpi", "600");
        assertOne(findings, "passes.shadow | " + demo.resolve("shadow.jpg"));
        assertOne(findings, "heights | " + demo.resolve("lines-people-height.pdf") + ": no upright has the colour");
    }

    @Test
    void whatIsAboutNoKeyHasNone() throws IOException {
        assertThat(built("", "--window", "-10,-10,100,100"))
                .containsExactly(" | the window reaches beyond the sheet, which is 431.8 x 279.4 mm;"
                        + " what lies on the sheet is shown");
        Cli merged = Cli.run(
                "merge",
                "--shadow",
                demo.resolve("shadow.jpg").toString(),
                "--size",
                "17x11in",
                "--dpi",
                "600",
                "--output",
                demo.resolve("out/merged.png").toString(),
                "--json",
                "-",
                "--quiet");
        assertThat(merged.code()).as(merged.err()).isZero();
        JsonNode finding =
                new ObjectMapper().readTree(merged.out()).get("findings").get(0);
        assertThat(finding.get("text").asText()).contains("will look soft at 600");
        assertThat(finding.get("key").asText()).isEmpty();
    }

    /** And so a check tells the line of the item. */
    @Test
    void aCheckNamesTheSameItemsAndTheirLines() throws IOException {
        Path file = sheet("""
                veils:
                  trees: { color: "#ff0000" }
                """);
        Cli run = Cli.run("check", file.toString(), "--json", "-");
        assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
        JsonNode veil = null;
        for (JsonNode finding : new ObjectMapper().readTree(run.out()).get("findings")) {
            veil = finding.get("what").asText().startsWith("veils: 'trees'") ? finding : veil;
        }
        assertThat(veil).isNotNull();
        assertThat(veil.get("key").asText()).isEqualTo("veils.trees");
        assertThat(veil.get("line").asInt()).isEqualTo(5);
        assertThat(veil.get("why").asText()).isEqualTo("a veil that covers nothing hides nothing");
    }

    @Test
    void aCheckTellsTheLineOfAPointThatNoLongerLiesInItsFace() throws IOException {
        Path file = sheet("""
                regions:
                  sky:
                    faces: [[1, 1]]
                    area: 3 mm2
                """);
        Cli run = Cli.run("check", file.toString(), "--json", "-");
        assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
        JsonNode region = null;
        for (JsonNode finding : new ObjectMapper().readTree(run.out()).get("findings")) {
            region = finding.get("key").asText().equals("regions.sky.area") ? finding : region;
        }
        assertThat(region).isNotNull();
        assertThat(region.get("line").asInt()).isEqualTo(7);
        assertThat(region.get("column").asInt()).isEqualTo(11);
        assertThat(region.get("remedy").asText()).contains("then write area: ");
        assertThat(region.get("why").asText()).contains("faces follow the lines");
    }
}
