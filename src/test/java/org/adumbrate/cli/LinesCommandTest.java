package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class LinesCommandTest {
    private static final String DEMO = "passes/kiln-yard/lines-people-height.pdf";

    @Test
    void eachColourComesWithAPenThatMaySuitIt() {
        Cli run = Cli.run("lines", DEMO);
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("#404048    1646 strokes    12306.0 mm  perhaps building, 0.25 mm: more line than any other")
                .contains("perhaps cut, 0.7 mm: the blackest, in long pieces of 17 mm")
                .contains("perhaps height lines, not drawn: uprights of one height under a horizon");
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
}
