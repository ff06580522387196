package org.adumbrate.delivery;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.adumbrate.cli.DemoCopy;
import org.adumbrate.delivery.kept.KeptFolder;
import org.adumbrate.fault.Refusal;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run.Count;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.report.SheetReport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each build here stands for a run of its own: it has what the folder beside the outputs holds and no more. */
class ReuseAcrossRunsTest {
    private static final Set<String> ITEMS = Set.of("underlay", "drawing", "preview");

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void built() throws IOException, Refusal {
        file = DemoCopy.kilnYard(folder).resolve("kiln-yard.sheet.yaml");
        assertThat(run(KeptFolder.memoryBesideOutputs()).stages().values()).allMatch(count -> count.reused() == 0);
    }

    @Test
    void nothingIsMadeTwice() throws IOException, Refusal {
        assertThat(madeAnewOf(sameAsAnew())).isEmpty();
    }

    @Test
    void changedOpacityPlacesNothingAnew() throws IOException, Refusal {
        String text = Files.readString(file);
        Files.writeString(file, text.replaceFirst("opacity: \\d+", "opacity: 33"));
        assertThat(madeAnewOf(sameAsAnew())).containsExactly("underlay");
    }

    @Test
    void changedLinesPlaceEverythingAnew() throws IOException, Refusal {
        // the trees' file shows the same view with more in it
        Files.copy(
                file.resolveSibling("lines-trees.pdf"),
                file.resolveSibling("lines.pdf"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        assertThat(sameAsAnew().stages())
                .containsEntry("placement", new Count(0, 3))
                .containsEntry("tones", new Count(2, 0));
    }

    @Test
    void damagedAndMissingFilesAreMadeAnew() throws IOException, Refusal {
        Path kept = file.resolveSibling("out").resolve(".adumbrate-kept");
        List<Path> files;
        try (Stream<Path> found = Files.list(kept)) {
            files = found.filter(each -> each.toString().endsWith(".kept"))
                    .sorted()
                    .toList();
        }
        assertThat(files).hasSizeGreaterThan(10);
        for (int k = 0; k < files.size(); k++) {
            if (k % 2 == 0) {
                Files.delete(files.get(k));
            } else {
                Files.writeString(files.get(k), "nothing of ours");
            }
        }
        assertThat(sameAsAnew().stages().values()).allMatch(count -> count.reused() == 0);
    }

    private static List<String> madeAnewOf(BuildResult result) {
        return result.stages().entrySet().stream()
                .filter(stage -> stage.getValue().made() > 0)
                .map(Map.Entry::getKey)
                .toList();
    }

    private BuildResult sameAsAnew() throws IOException, Refusal {
        BuildResult quick = run(KeptFolder.memoryBesideOutputs());
        Map<String, String> bytes = contents(quick);
        assertThat(contents(run(Memory.none()))).isEqualTo(bytes);
        return quick;
    }

    private BuildResult run(Memory memory) throws IOException, Refusal {
        BuildResult result = SheetBuild.run(
                file,
                ITEMS,
                OptionalDouble.of(40),
                Optional.empty(),
                StageClock.Listener.SILENT,
                memory,
                SheetReport::new);
        memory.close();
        return result;
    }

    private static Map<String, String> contents(BuildResult result) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        for (Output output : result.outputs()) {
            contents.put(output.kind(), Files.readString(output.file(), java.nio.charset.StandardCharsets.ISO_8859_1));
        }
        contents.put("findings", result.findings().toString());
        return contents;
    }
}
