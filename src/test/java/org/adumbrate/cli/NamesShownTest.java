package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.adumbrate.fault.Shown;
import org.adumbrate.json.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names of files, layers, pens and keys are shown with every character that could mislead written out. */
class NamesShownTest {
    private static final String OVERRIDE = "\u202e";
    private static final String LINES = "<svg xmlns='http://www.w3.org/2000/svg' width='90mm' height='60mm'>"
            + "<g id='trees" + OVERRIDE + "gpj'><path d='M10 10 80 50' stroke='#00a000'/></g></svg>";

    @TempDir
    private Path folder;

    @Test
    void aFileWhoseNameCommandsTheTerminal() throws IOException {
        Path file = Files.writeString(folder.resolve("plan\u001b[2J\n.svg"), LINES);
        Cli read = Cli.run("lines", file.toString());
        assertPlain(read, 0);
        assertThat(read.out()).startsWith(folder + "/plan\\u001B[2J\\u000A.svg: 90 x 60 mm");
        Cli missing = Cli.run("lines", file + "x");
        assertPlain(missing, 3);
        assertThat(missing.err())
                .contains("plan\\u001B[2J\\u000A.svgx: does not exist")
                .hasLineCount(1);
    }

    @Test
    void aLayerWhoseNameTurnsTheText() throws IOException {
        Path file = Files.writeString(folder.resolve("lines.svg"), LINES);
        Cli read = Cli.run("lines", file.toString(), "--json", "-");
        assertPlain(read, 0);
        assertThat(new ObjectMapper().readTree(read.out()).at("/colors/0/color").asText())
                .isEqualTo("#00a000");
        assertPlain(Cli.run("lines", file.toString()), 0);
        assertPlain(Cli.run("start", folder.toString()), 0);
        assertPlain(
                Cli.run(
                        "check",
                        folder.resolve(folder.getFileName() + ".sheet.yaml").toString()),
                1);
    }

    @Test
    void keysAndPensWhoseNamesTurnTheText() throws IOException {
        Files.writeString(folder.resolve("lines.svg"), LINES);
        Path sheet = Files.writeString(
                folder.resolve("a.sheet.yaml"),
                "lines: lines.svg\npens: { \"a" + OVERRIDE + "\": { color: black } }\nk" + OVERRIDE
                        + ": 1\ndeliver: { preview: out/p.png }\n");
        Cli built = Cli.run("build", sheet.toString());
        assertPlain(built, 3);
        assertThat(built.err()).contains("'a\\u202E' is no name", "unknown key 'k\\u202E'");
    }

    @Test
    void jsonWritesThemAsItsOwnEscapes() throws IOException {
        String name = "a" + OVERRIDE + "\u0085\u0007\"\\";
        String text = org.adumbrate.json.Json.text(name);
        assertThat(text).isEqualTo("\"a\\u202E\\u0085\\u0007\\\"\\\\\"");
        assertThat(new ObjectMapper().readValue(text, String.class)).isEqualTo(name);
    }

    @Test
    void anArgumentThatIsNotUnderstood() {
        assertPlain(Cli.run("lines", "--no" + OVERRIDE + "thing"), 2);
    }

    private static void assertPlain(Cli run, int code) {
        assertThat(run.code()).as(run.err()).isEqualTo(code);
        assertThat((run.out() + run.err()).replaceAll("[\n\t]", "").chars().filter(Shown::isUnfit))
                .as(run.toString())
                .isEmpty();
    }
}
