package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.reading.SheetFileReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** First sheet files of the demo's exports, under their names and under others. */
class StartCommandTest {
    private static final Path DEMO = Path.of("passes", "kiln-yard");

    @TempDir
    private Path folder;

    /** Copies exports of the demo under new names. */
    private Path exports(String... oldAndNew) throws IOException {
        Path copy = Files.createDirectory(folder.resolve("job 1"));
        for (int k = 0; k < oldAndNew.length; k += 2) {
            Files.copy(DEMO.resolve(oldAndNew[k]), copy.resolve(oldAndNew[k + 1]));
        }
        return copy;
    }

    private static Sheet start(Path exports) throws IOException {
        Cli run = Cli.run("start", exports.toString());
        assertThat(run.code()).as(run.err()).isZero();
        return SheetFileReader.read(exports.resolve("job 1.sheet.yaml")).sheet();
    }

    private static String name(Path file) {
        return file.getFileName().toString();
    }

    @Test
    void contentTellsUnderAnyName() throws IOException {
        Path exports = exports(
                "lines.pdf", "trees.pdf",
                "lines-trees.pdf", "people-height.bin",
                "lines-people-height.pdf", "x",
                "shadow.jpg", "occlusion.png",
                "occlusion.png", "my shadow #1.jpg",
                "README.md", "README.md");
        Sheet sheet = start(exports);
        assertThat(name(sheet.lines().get(0).file())).isEqualTo("trees.pdf");
        assertThat(name(sheet.heights().orElseThrow().lines())).isEqualTo("x");
        assertThat(name(sheet.passes().shadow().orElseThrow().file())).isEqualTo("occlusion.png");
        assertThat(name(sheet.passes().occlusion().orElseThrow().file())).isEqualTo("my shadow #1.jpg");
        assertThat(sheet.veils()).containsKey("trees");
        assertThat(sheet.pens().keySet()).contains("building", "paving", "furniture", "glass", "ground");
        assertThat(sheet.cut().orElseThrow().color()).hasToString("#000000");

        // the building was modelled with these floors, and the eye 4.25 m above the lowest
        Map<String, Double> elevations = new LinkedHashMap<>();
        sheet.floors()
                .forEach((floor, stated) ->
                        elevations.put(floor, stated.elevation().m()));
        assertThat(elevations)
                .containsExactly(
                        Map.entry("floor-1", 0.0),
                        Map.entry("floor-2", 0.15),
                        Map.entry("floor-3", 0.75),
                        Map.entry("floor-4", 3.35));
        var principal = sheet.camera().orElseThrow().principalPoint().orElseThrow();
        assertThat(principal.x()).isBetween(213.8, 214.2);
        assertThat(principal.y()).isBetween(150.3, 150.7);

        Cli build = Cli.run("build", exports.resolve("job 1.sheet.yaml").toString(), "--dpi", "50");
        assertThat(build.code()).as(build.err()).isZero();
        assertThat(build.err()).doesNotContain("warning:");
        assertThat(exports.resolve("out")).isDirectoryContaining("glob:**/job 1.pdf");
    }

    @Test
    void whatIsMissingIsSaidAndLeftOut() throws IOException {
        Path exports = exports("lines-trees.pdf", "only.pdf");
        Sheet sheet = start(exports);
        assertThat(sheet.passes().shadow()).isEmpty();
        assertThat(sheet.heights()).isEmpty();
        assertThat(sheet.veils()).containsKey("trees");
        assertThat(exports.resolve("job 1.sheet.yaml"))
                .content()
                .contains("# passes:")
                .contains("no raster here looks like it")
                .contains("No colour looks like height lines");
        Cli build =
                Cli.run("build", exports.resolve("job 1.sheet.yaml").toString(), "--only", "drawing", "--dpi", "50");
        assertThat(build.code()).as(build.err()).isZero();
    }

    @Test
    void whatIsThereIsNotOverwritten() throws IOException {
        Path exports = exports("lines.pdf", "lines.pdf");
        Path file = Files.writeString(exports.resolve("job 1.sheet.yaml"), "mine");
        Cli refused = Cli.run("start", exports.toString());
        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.err()).contains("is there already").contains("--output");
        assertThat(file).hasContent("mine");
        Path other = folder.resolve("elsewhere").resolve("a.sheet.yaml");
        Cli written = Cli.run("start", exports.toString(), "--output", other.toString());
        assertThat(written.code()).as(written.err()).isZero();
        assertThat(name(SheetFileReader.read(other).sheet().lines().get(0).file()))
                .isEqualTo("lines.pdf");
    }

    @Test
    void machinesReadWhatWasDecidedAndTwiceTheSame() throws IOException {
        Path exports = exports("lines.pdf", "a", "lines-people-height.pdf", "b");
        Path one = folder.resolve("one.sheet.yaml");
        Cli run = Cli.run("start", exports.toString(), "--output", one.toString(), "--json", "-");
        JsonNode json = new ObjectMapper().readTree(run.out());
        assertThat(json.get("decided").findValuesAsText("what")).contains("lines", "heights", "floors", "cut");
        assertThat(json.get("open").findValuesAsText("what")).contains("passes.shadow", "sun", "camera.focal");
        Path two = folder.resolve("two.sheet.yaml");
        Cli.run("start", exports.toString(), "--output", two.toString());
        assertThat(Files.readString(two).replace("two.pdf", "one.pdf")).isEqualTo(Files.readString(one));
    }

    @Test
    void aFolderWithoutLinesIsTold() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        Cli run = Cli.run("start", empty.toString());
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("holds no line sheet").contains("PDF or SVG");
        assertThat(Cli.run("start", folder.resolve("none").toString()).err()).contains("does not exist");
    }

    @Test
    void damagedFilesAreNamedAndLeftOut() throws IOException {
        Path exports = exports("lines.pdf", "lines.pdf");
        Files.write(exports.resolve("broken.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0});
        start(exports);
        assertThat(exports.resolve("job 1.sheet.yaml")).content().contains("# not used: broken.png: ");
    }
}
