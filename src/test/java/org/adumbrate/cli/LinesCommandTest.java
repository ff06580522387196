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

class LinesCommandTest {
    private static final String DEMO = "passes/kiln-yard/lines-people-height.pdf";

    @Test
    void eachColourComesWithAPenThatMaySuitIt() {
        Cli run = Cli.run("lines", DEMO);
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("#404048    1646 strokes    12306.0 mm  perhaps building, 0.25 mm: more line than any other")
                .contains("perhaps cut, 0.7 mm: the blackest, in long pieces of 17 mm")
                .contains("perhaps height lines, not drawn: uprights of one height under one horizon");
    }

    @Test
    void machinesReadTheSame() throws IOException {
        JsonNode colors = new ObjectMapper()
                .readTree(Cli.run("lines", DEMO, "--json", "-").out())
                .get("colors");
        assertThat(colors.get(0).get("color").asText()).isEqualTo("#404048");
        assertThat(colors.get(0).get("strokes").asInt()).isEqualTo(1646);
        assertThat(colors.get(0).get("pen").get("role").asText()).isEqualTo("building");
        assertThat(colors.get(0).get("pen").get("widthMm").asDouble()).isEqualTo(0.25);
        assertThat(colors.get(0).get("pen").get("reason").asText()).startsWith("more line than any other");
        JsonNode heights = colors.get(4);
        assertThat(heights.get("pen").get("role").asText()).isEqualTo("height lines");
        assertThat(heights.get("pen").has("widthMm")).isFalse();
    }

    @Test
    void whatIsHiddenAndWhatIsNoLineIsTold(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(
                folder.resolve("faces.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm' viewBox='0 0 100 100'>"
                        + "<g stroke='red' fill='none'><path d='M0 50H100'/><path d='M20 60H80'/><path d='M20 40H80'/></g>"
                        + "<rect x='10' y='10' width='80' height='80' fill='white'/>"
                        + "<rect width='10' height='5'/><text>a</text></svg>");
        assertThat(Cli.run("lines", file.toString()).out())
                .contains("#ff0000       1 strokes       20.0 mm")
                .contains("areas painted over them hide 2 strokes and a part of 1 more, 200.0 mm in all")
                .contains("not taken as lines: 1 filled area (50 mm²), 1 white area (6400 mm²), 1 text");
        JsonNode all = new ObjectMapper()
                .readTree(Cli.run("lines", file.toString(), "--json", "-").out());
        assertThat(all.get("hidden").get("strokes").asInt()).isEqualTo(2);
        assertThat(all.get("hidden").get("cut").asInt()).isEqualTo(1);
        assertThat(all.get("hidden").get("lengthMm").asDouble()).isCloseTo(200, within(1e-3));
        assertThat(all.get("leftOut").get(0).get("kind").asText()).isEqualTo("area");
        assertThat(all.get("leftOut").get(0).get("count").asInt()).isEqualTo(1);
        assertThat(all.get("leftOut").get(0).get("areaMm2").asDouble()).isCloseTo(50, within(1e-6));
    }
}
