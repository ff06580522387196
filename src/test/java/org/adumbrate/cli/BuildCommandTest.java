package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BuildCommandTest {
    private static final List<String> OUTPUTS = List.of("underlay.tif", "kiln-yard.pdf", "preview.png", "report.html");

    @TempDir
    private Path folder;

    private static Cli build(Path yard, String... more) {
        List<String> args = new ArrayList<>(
                List.of("build", yard.resolve("kiln-yard.sheet.yaml").toString(), "--dpi", "50"));
        args.addAll(List.of(more));
        return Cli.run(args.toArray(String[]::new));
    }

    /** What is in a folder, but for what is kept for later builds. */
    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.equals(".adumbrate-kept"))
                    .toList();
        }
    }

    @Test
    void aDryRunTellsWhatABuildWritesAndWritesNothing() throws IOException {
        Path yard = DemoCopy.kilnYard(folder);
        Cli plan = build(yard, "--dry-run");
        assertThat(plan.code()).as(plan.err()).isZero();
        // 17 x 11 in at 50 dpi
        assertThat(plan.out())
                .contains("read " + yard.resolve("lines.pdf"), "read " + yard.resolve("depth.png"))
                .contains("write " + yard.resolve("out/underlay.tif") + ": underlay, 850 x 550", "new");
        assertThat(yard.resolve("out")).doesNotExist();

        assertThat(build(yard).code()).isZero();
        Cli again = build(yard, "--dry-run", "--json", "-");
        for (String output : names(yard.resolve("out"))) {
            assertThat(again.out()).contains(output);
        }
        assertThat(again.out()).contains("\"replaces\"").doesNotContain("false");
    }

    @Test
    void aDryRunComplainsAsABuildDoes() throws IOException {
        Path yard = DemoCopy.kilnYard(folder);
        assertThat(build(yard, "--dry-run", "--only", "flat").code()).isEqualTo(ExitCode.REFUSED);
        Files.delete(yard.resolve("shadow.jpg"));
        Cli built = build(yard);
        Cli dry = build(yard, "--dry-run");
        assertThat(dry.code()).isEqualTo(built.code()).isNotZero();
        assertThat(dry.err()).isEqualTo(built.err()).contains("shadow.jpg");
    }

    @Test
    void twoBuildsAtOnceInOneFolderDoNotSpoilEachOther() throws IOException {
        Path yard = DemoCopy.kilnYard(folder);
        Path alone = DemoCopy.kilnYard(folder.resolve("alone"));
        assertThat(build(alone).code()).isZero();
        CompletableFuture<Cli> other = CompletableFuture.supplyAsync(() -> build(yard));
        Cli one = build(yard);
        assertThat(one.code()).as(one.err()).isZero();
        assertThat(other.join().code()).as(other.join().err()).isZero();
        assertThat(names(yard.resolve("out"))).containsExactlyInAnyOrderElementsOf(OUTPUTS);
        for (String output : OUTPUTS) {
            assertThat(yard.resolve("out").resolve(output))
                    .hasSameBinaryContentAs(alone.resolve("out").resolve(output));
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldInOneLine() throws IOException {
        Path yard = DemoCopy.kilnYard(folder);
        // in the way of the folder: refused to everyone, where a folder's permissions would not bind an administrator
        Files.writeString(yard.resolve("out"), "");
        Cli result = build(yard);
        assertThat(result.code()).isEqualTo(ExitCode.INPUT_OUTPUT);
        assertThat(result.err().lines().filter(line -> line.contains("cannot be written")))
                .hasSize(1);
        assertThat(result.err()).doesNotContain("\tat ");
        assertThat(yard.resolve("out")).isEmptyFile();
    }

    @Test
    void whatCannotBeWrittenIsToldBeforeTheWorkAllAtOnce() throws IOException {
        Path yard = DemoCopy.kilnYard(folder);
        Files.writeString(yard.resolve("way"), "in the way");
        Path sheet = yard.resolve("kiln-yard.sheet.yaml");
        Files.writeString(
                sheet,
                Files.readString(sheet)
                        .replace("out/kiln-yard.pdf", "way/kiln-yard.pdf")
                        .replace("out/report.html", "way/deep/report.html"));
        Path result = Files.createDirectory(yard.resolve("result.json"));
        for (String option : List.of("--anew", "--dry-run")) {
            Cli built = build(yard, option, "--json", result.toString());
            assertThat(built.code()).isEqualTo(ExitCode.INPUT_OUTPUT);
            assertThat(built.err().lines())
                    .containsExactlyInAnyOrder(
                            result + ": is a folder; name a file in it",
                            yard.resolve("way/kiln-yard.pdf") + ", " + yard.resolve("way/deep/report.html")
                                    + ": cannot be written (" + yard.resolve("way")
                                    + " is not a folder); choose another place; nothing was written");
            // the preview comes first, and its folder is fine
            assertThat(yard.resolve("out")).doesNotExist();
        }
    }

    @Test
    void outputsThatAreLinksAreFollowedKeptAndTold() throws IOException {
        Path yard = DemoCopy.kilnYard(folder);
        Path share = Files.createDirectory(folder.resolve("share"));
        Path shared = Files.writeString(share.resolve("shared.png"), "old");
        Path preview = yard.resolve("out/preview.png");
        Files.createDirectory(yard.resolve("out"));
        Files.createSymbolicLink(preview, shared);
        Path json = Files.createSymbolicLink(yard.resolve("result.json"), share.resolve("result.json"));
        Cli built = build(yard, "--only", "preview", "--json", json.toString());
        assertThat(built.code()).as(built.err()).isZero();
        assertThat(preview).isSymbolicLink();
        assertThat(shared).isRegularFile();
        assertThat(Files.size(shared)).isGreaterThan(1000);
        assertThat(built.out()).contains("a link, which is kept, to " + shared.toRealPath());
        assertThat(built.err()).contains("note: " + json + " is a link and was kept");
        assertThat(json).isSymbolicLink();
        assertThat(share.resolve("result.json"))
                .content()
                .contains("\"linksTo\"", shared.toRealPath().toString());
        assertThat(names(share)).containsExactlyInAnyOrder("shared.png", "result.json");
    }
}
