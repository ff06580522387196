package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Height lines of the demo. Its model has the eye at 4.25 m, the horizon at 150.5 mm, and floors at 0, 0.15, 0.75 and 3.35 m;
 * about half of the lines are drawn 0.03 to 0.15 mm off.
 */
class HeightsCommandTest {
    private static final String LINES =
            Path.of("passes", "kiln-yard", "lines-people-height.pdf").toString();
    private static final String FLOORS = "yard=0,studio=0.15,terrace=0.75,upper=3.35";

    private static Cli heights(String... more) {
        List<String> args = new ArrayList<>(List.of("heights", LINES, "--height", "1.65m"));
        args.addAll(List.of(more));
        return Cli.run(args.toArray(String[]::new));
    }

    private static JsonNode json(Cli result) throws IOException {
        assertThat(result.code()).as(result.err()).isZero();
        return new ObjectMapper().readTree(result.out());
    }

    @Test
    void findsHorizonAndFloorsOfTheDemo() throws IOException {
        JsonNode found = json(heights("--color", "#e60028", "--json", "-"));
        double error = found.at("/horizonErrorMm").asDouble();
        assertThat(error).isBetween(0.02, 0.2); // the lines of the building meet on it
        assertThat(found.at("/horizonMm").asDouble()).isCloseTo(150.5, within(0.1));
        double[] eyes = {4.25, 4.10, 3.50, 0.90};
        int[] lines = {4, 4, 2, 3};
        assertThat(found.at("/floors")).hasSize(4);
        for (int k = 0; k < 4; k++) {
            JsonNode floor = found.at("/floors/" + k);
            assertThat(floor.at("/name").asText()).isEqualTo("floor-" + (k + 1));
            assertThat(floor.at("/eyeHeightM").asDouble()).isCloseTo(eyes[k], within(0.05));
            assertThat(floor.at("/lines").asInt()).isEqualTo(lines[k]);
            assertThat(floor.at("/rmsMm").asDouble()).isLessThan(0.15);
            assertThat(floor.at("/outliers").asInt()).isZero();
        }
    }

    /** A figure of 1.68 m at (3, 1) of the upper floor: seen at (150.857, 167.214), its head at y 136.014. */
    @Test
    void sizesAFigure() throws IOException {
        JsonNode found = json(heights(
                "--color",
                "#e60028",
                "--floors",
                FLOORS,
                "--at",
                "150.857,167.214",
                "--stature",
                "1.68m",
                "--floor",
                "upper",
                "--json",
                "-"));
        assertThat(found.at("/floor").asText()).isEqualTo("upper");
        assertThat(found.at("/footMm/0").asDouble()).isEqualTo(150.857);
        assertThat(found.at("/headMm/0").asDouble()).isEqualTo(150.857);
        assertThat(found.at("/headMm/1").asDouble()).isCloseTo(136.014, within(0.005 * 31.2));
    }

    @Test
    void tellsItToPeople() {
        Cli told = heights("--color", "#e60028", "--floors", FLOORS, "--at", "334.8,228.3", "--floor", "yard");
        assertThat(told.code()).isZero();
        assertThat(told.out())
                .contains("horizon at 150.")
                .containsPattern("yard +eye +4.2\\d\\d m")
                .containsPattern("a figure of 1.65 m at \\(334.80, 228.30\\) on yard is 30.\\d\\d mm tall");
    }

    @Test
    void asksForTheFloorWhereSeveralMayBeMeant() {
        Cli told = heights("--color", "#e60028", "--at", "334.8,228.3");
        assertThat(told.code()).isEqualTo(1);
        assertThat(told.err().trim()).doesNotContain("\n").contains("floor-1, floor-2, floor-3, floor-4");
        Cli unknown = heights("--color", "#e60028", "--at", "334.8,228.3", "--floor", "attic");
        assertThat(unknown.code()).isEqualTo(1);
        assertThat(unknown.err()).contains("'attic'").contains("floor-4");
    }

    @Test
    void saysWhichColoursThereAre() {
        Cli told = heights("--color", "#123456");
        assertThat(told.code()).isEqualTo(3);
        assertThat(told.err().trim()).doesNotContain("\n").contains("#123456").contains("#e60028");
    }

    @Test
    void refusesAColourOfAllHeights() {
        Cli told = heights("--color", "#404048");
        assertThat(told.code()).isEqualTo(1);
        assertThat(told.err().trim()).doesNotContain("\n").contains("check the colour");
    }

    @Test
    void complainsAboutWhatItCannotUnderstand() {
        for (String[] wrong : new String[][] {
            {"--color", "red"},
            {"--color", "#e60028", "--at", "12"},
            {"--color", "#e60028", "--stature", "1.7m"},
            {"--color", "#e60028", "--at", "12,13", "--stature", "1.7 parsecs"},
            {"--color", "#e60028", "--floors", "yard=low"}
        }) {
            assertThat(heights(wrong).code()).as(String.join(" ", wrong)).isEqualTo(2);
        }
    }
}
