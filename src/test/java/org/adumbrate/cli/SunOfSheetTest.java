package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's sun: azimuth 190 with north at 24, altitude 47. */
class SunOfSheetTest {
    private static final Path DEMO = Path.of("passes", "kiln-yard").toAbsolutePath();
    private static final String SHADOW = "passes:\n  shadow: { file: '%s' }\n".formatted(DEMO.resolve("shadow.jpg"));
    private static final String HEIGHTS = "heights: { lines: '%s', color: \"#e60028\", height: 1.65 m }\n"
            .formatted(DEMO.resolve("lines-people-height.pdf"));

    @TempDir
    private Path folder;

    private Cli sun(String text, String... more) throws IOException {
        Path file = Files.writeString(
                folder.resolve("a.sheet.yaml"),
                "lines: '" + DEMO.resolve("lines.pdf") + "'\n" + text + "deliver:\n  preview: out/p.png\n");
        String[] all = new String[3 + more.length];
        all[0] = "sun";
        all[1] = "--sheet";
        all[2] = file.toString();
        System.arraycopy(more, 0, all, 3, more.length);
        return Cli.run(all);
    }

    @Test
    void readsTheSunFromLinesHeightLinesAndShadowPass() throws IOException {
        Cli run = sun(SHADOW + HEIGHTS + "camera: { focal: 260 mm }\n", "--json", "-");
        assertThat(run.code()).as(run.err()).isZero();
        JsonNode json = new ObjectMapper().readTree(run.out());
        double error = json.get("errorDeg").asDouble();
        assertThat(error).isBetween(0.05, 1.0);
        assertThat(json.get("azimuthDeg").asDouble()).isCloseTo(214, within(Math.min(1, 3 * error)));
        assertThat(json.get("altitudeDeg").asDouble()).isCloseTo(47, within(Math.min(1, 3 * error)));
        assertThat(json.get("northKnown").asBoolean()).isFalse();
    }

    @Test
    void saysFromWhereTheAzimuthCountsAndWhereAStatedSunDiffers() throws IOException {
        Cli run = sun(SHADOW + HEIGHTS + "camera: { focal: 260 mm }\nsun: { azimuth: 120, altitude: 47, north: 24 }\n");
        assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(run.out()).contains("degrees clockwise from north", "give or take", "state that instead");
        assertThat(run.err()).contains("a.sheet.yaml:6:", "degrees from the sun of the shadow pass");
    }

    @Test
    void refusesAnglesWithoutAFocalLengthAndGivesASample() throws IOException {
        Cli run = sun(SHADOW + HEIGHTS);
        assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(run.err()).contains("state camera.focal", "{ sample: { foot: [");
    }

    @Test
    void refusesASheetWithoutAShadowPass() throws IOException {
        Cli run = sun(HEIGHTS + "camera: { focal: 260 mm }\n");
        assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(run.err()).contains("no shadow pass to read the sun from", "give passes.shadow");
    }

    @Test
    void goesWithNoOtherWay() {
        Cli run = Cli.run("sun", "--sheet", "a.sheet.yaml", "--place", "1,2", "--at", "2021-06-21T12:00Z");
        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("--sheet goes with neither");
    }
}
