package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever a command is asked to write, it never writes over what it reads or what the sheet delivers. */
class OverwriteTest {
    @TempDir
    private Path folder;

    private Path yard;
    private String sheet;
    private Map<String, String> before;

    @BeforeEach
    void prepare() throws IOException {
        yard = DemoCopy.kilnYard(folder);
        sheet = yard.resolve("kiln-yard.sheet.yaml").toString();
        Files.createDirectory(yard.resolve("out"));
        for (String output : List.of("underlay.tif", "kiln-yard.pdf", "preview.png", "report.html")) {
            Files.writeString(yard.resolve("out").resolve(output), "yesterday's " + output);
        }
        Files.createSymbolicLink(yard.resolve("link.json"), Path.of("lines.pdf"));
        before = contents();
    }

    private Map<String, String> contents() throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(yard)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(yard.relativize(file).toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return contents;
    }

    @AfterEach
    void everythingIsAsItWas() throws IOException {
        assertThat(contents()).isEqualTo(before);
    }

    private String in(String name) {
        return yard.resolve(name).toString();
    }

    private void assertRefused(String written, String... args) {
        Cli result = Cli.run(args);
        assertThat(result.code()).as(String.join(" ", args) + result).isEqualTo(ExitCode.REFUSED);
        assertThat(result.err()).contains(written).contains("another name").doesNotContain("\tat ");
    }

    private void assertJsonRefused(List<String> targets, String... args) {
        for (String target : targets) {
            List<String> all = new ArrayList<>(List.of(args));
            all.addAll(List.of("--json", in(target)));
            assertRefused(target, all.toArray(String[]::new));
        }
    }

    @Test
    void resultsOfABuild() {
        List<String> all = List.of(
                "kiln-yard.sheet.yaml",
                "lines.pdf",
                "shadow.jpg",
                "depth.png",
                "lines-people-height.pdf",
                "lines-trees.pdf",
                "out/underlay.tif",
                "out/report.html",
                "link.json",
                "out/../shadow.jpg");
        assertJsonRefused(all, "build", sheet, "--dry-run");
        assertJsonRefused(all, "build", sheet, "--dpi", "40");
        assertJsonRefused(all, "build", sheet, "--only", "preview", "--dpi", "40");
        assertJsonRefused(all, "check", sheet);
        assertJsonRefused(
                List.of("out/preview.png", "out/preview-window.png"),
                "build",
                sheet,
                "--only",
                "preview",
                "--window",
                "10,10,50,50");
    }

    @Test
    void resultsOfOtherCommands() {
        assertJsonRefused(List.of("lines.pdf", "link.json"), "lines", in("lines.pdf"));
        assertJsonRefused(
                List.of("lines-people-height.pdf"),
                "heights",
                in("lines-people-height.pdf"),
                "--color",
                "#e60028",
                "--height",
                "1.65m");
        assertJsonRefused(List.of("lines.pdf", "shadow.jpg"), "register", in("lines.pdf"), in("shadow.jpg"));
        assertJsonRefused(
                List.of("shadow.jpg", "new.tif"),
                "merge",
                "--shadow",
                in("shadow.jpg"),
                "--size",
                "17x11in",
                "--dpi",
                "40",
                "--output",
                in("new.tif"));
        assertJsonRefused(
                List.of("lines.pdf", "depth.png", "kiln-yard.sheet.yaml", "first.sheet.yaml"),
                "start",
                yard.toString(),
                "--output",
                in("first.sheet.yaml"));
    }

    @Test
    void picturesOfPlacements() throws IOException {
        assertRefused(
                "shadow.jpg", "register", in("lines.pdf"), in("shadow.jpg"), "--picture", in("out/../shadow.jpg"));
        // the pictures get the passes' names: this one would be the occlusion's own file
        Path pass = Files.copy(yard.resolve("occlusion.png"), yard.resolve("a-shadow.png"));
        before = contents();
        assertRefused(
                "a-shadow.png",
                "register",
                in("lines.pdf"),
                in("shadow.jpg"),
                pass.toString(),
                "--picture",
                in("a.png"));
        // and these would be one picture
        Path other = Files.createDirectory(yard.resolve("other"));
        Files.copy(yard.resolve("occlusion.png"), other.resolve("shadow.png"));
        before = contents();
        assertRefused(
                "b-shadow.png",
                "register",
                in("lines.pdf"),
                in("shadow.jpg"),
                in("other/shadow.png"),
                "--picture",
                in("b.png"));
    }

    @Test
    void underlaysOfAMerge() {
        String[] merge = {"merge", in("lines.pdf"), "--shadow", in("shadow.jpg"), "--dpi", "40", "--output", ""};
        for (String target : List.of("lines.pdf", "link.json", "shadow.jpg")) {
            // a merge writes .tif or .png alone, which a link may be called
            try {
                Path named = Files.createSymbolicLink(yard.resolve("l.tif"), Path.of(target));
                merge[merge.length - 1] = named.toString();
                assertRefused("l.tif", merge);
                Files.delete(named);
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        }
    }

    @Test
    void outputsThatAreLinksToInputs() throws IOException {
        Files.delete(yard.resolve("out/preview.png"));
        Files.createSymbolicLink(yard.resolve("out/preview.png"), Path.of("../shadow.jpg"));
        before = contents();
        Cli result = Cli.run("build", sheet, "--dpi", "40");
        assertThat(result.code()).isEqualTo(ExitCode.INPUT_OUTPUT);
        assertThat(result.err()).contains("is also read as 'passes.shadow.file'");
        Files.delete(yard.resolve("out/preview.png"));
        Files.createSymbolicLink(yard.resolve("out/preview.png"), Path.of("../kiln-yard.sheet.yaml"));
        before = contents();
        assertRefused("preview.png", "build", sheet, "--dpi", "40");
    }
}
