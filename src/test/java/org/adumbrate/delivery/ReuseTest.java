package org.adumbrate.delivery;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.adumbrate.cli.DemoCopy;
import org.adumbrate.fault.Refusal;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.Run.Count;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.report.SheetReport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReuseTest {
    private static final String SHEET = """
            size: 17 x 11 in
            lines: lines.pdf
            heights: { lines: lines-people-height.pdf, color: "#e60028", height: 1.65 m }
            passes: { occlusion: { file: occlusion.png, opacity: 45 }, depth: { file: depth.png, near: 12 m, far: 45 m } }
            floors: { yard: 0 m, studio: 0.15 m, terrace: 0.75 m, upper: 3.35 m }
            camera: { focal: 260 mm }
            sun: { azimuth: 190, altitude: 47, north: 24 }
            pens:
              building: { color: "#404048", role: building, width: 0.25, fades: 50 }
              trees: { color: "#963ca0", dash: [1.6, 0.8] }
            profile: 0.5 mm
            cut: { color: "#000000", hatch: { spacing: 1.5 } }
            veils:
              panes: { color: "#00aabe", opacity: 20 }
            figures:
              - { outline: standing, foot: [334.8, 228.3], floor: yard }
            deliver: { underlay: out/underlay.tif, drawing: out/drawing.pdf, preview: out/preview.png }
            """;

    @TempDir
    private Path folder;

    private Path copy;
    private Path file;
    private final Memory memory = Memory.inMemory();
    private Map<String, Count> account = Map.of();

    @BeforeEach
    void built() throws IOException, Refusal {
        copy = DemoCopy.kilnYard(folder);
        file = Files.writeString(copy.resolve("studio.sheet.yaml"), SHEET);
        build(memory);
        assertThat(account).containsEntry("placement", new Count(0, 2)).containsEntry("cut", new Count(0, 1));
    }

    @Test
    void changedOpacityPlacesNothingAnew() throws IOException, Refusal {
        change("opacity: 45", "opacity: 70");
        assertSameAsAnew();
        assertMadeAlone("underlay");
        assertThat(account).containsEntry("placement", new Count(2, 0)).containsEntry("tones", new Count(1, 0));
    }

    @Test
    void changedPenCleansNothingAnew() throws IOException, Refusal {
        change("width: 0.25", "width: 0.4");
        assertSameAsAnew();
        assertMadeAlone();
    }

    @Test
    void movedFigureLeavesAllElse() throws IOException, Refusal {
        change("[334.8, 228.3]", "[330, 228.3]");
        assertSameAsAnew();
        assertMadeAlone("underlay");
    }

    @Test
    void changedHatchMakesTheCutAlone() throws IOException, Refusal {
        change("spacing: 1.5", "spacing: 1.1");
        assertSameAsAnew();
        assertThat(account)
                .containsEntry("cut", new Count(1, 0))
                .containsEntry("layers of the cut", new Count(0, 1))
                .containsEntry("placement", new Count(2, 0))
                .containsEntry("cleaned pens", new Count(3, 0));
    }

    @Test
    void replacedPassIsPlacedAndMeasuredAnew() throws IOException, Refusal {
        // another pass of the same view
        Files.write(copy.resolve("occlusion.png"), Files.readAllBytes(copy.resolve("shadow.jpg")));
        assertSameAsAnew();
        assertThat(account)
                .containsEntry("placement", new Count(1, 1))
                .containsEntry("tones", new Count(0, 1))
                .containsEntry("line sheets", new Count(2, 0))
                .containsEntry("cut", new Count(1, 0));
    }

    @Test
    void replacedLinesPlaceEverythingAnew() throws IOException, Refusal {
        // the trees' file shows the same view with more in it
        Files.write(copy.resolve("lines.pdf"), Files.readAllBytes(copy.resolve("lines-trees.pdf")));
        assertSameAsAnew();
        assertThat(account)
                .containsEntry("line sheets", new Count(1, 1))
                .containsEntry("placement", new Count(0, 2))
                .containsEntry("tones", new Count(1, 0))
                .containsEntry("cut", new Count(0, 1));
    }

    @Test
    void goingBackIsKnown() throws IOException, Refusal {
        change("spacing: 1.5", "spacing: 1.1");
        build(memory);
        change("spacing: 1.1", "spacing: 1.5");
        assertSameAsAnew();
        assertThat(account).containsEntry("cut", new Count(1, 0));
    }

    @Test
    void contentCountsAndNotTime() throws IOException, Refusal {
        Files.setLastModifiedTime(copy.resolve("lines.pdf"), FileTime.fromMillis(1_000_000_000_000L));
        build(memory);
        assertThat(account.values()).allMatch(count -> count.made() == 0);
    }

    @Test
    void keepsNothingOfAFileThatChangedMeanwhile() throws IOException {
        Path changing = Files.writeString(folder.resolve("changing"), "before");
        assertThat(made(changing, "first", true)).isEqualTo("first");
        Files.writeString(changing, "before");
        assertThat(made(changing, "second", false)).isEqualTo("second");
        assertThat(made(changing, "third", false)).isEqualTo("second");
    }

    private String made(Path input, String result, boolean changes) throws IOException {
        try (Run run = memory.begin()) {
            return run.of(Part.PATTERN, String.class, List.of(run.digest(input)), () -> {
                if (changes) {
                    Files.writeString(input, "after it was looked at");
                }
                return result;
            });
        }
    }

    private void assertMadeAlone(String... stages) {
        assertThat(account.entrySet().stream()
                        .filter(stage -> stage.getValue().made() > 0)
                        .map(Map.Entry::getKey))
                .containsExactly(stages);
    }

    private void change(String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    private void assertSameAsAnew() throws IOException, Refusal {
        Map<String, String> quick = build(memory);
        Map<String, Count> reused = account;
        assertThat(build(Memory.none())).isEqualTo(quick);
        account = reused;
    }

    /** The bytes of what was delivered. */
    private Map<String, String> build(Memory kept) throws IOException, Refusal {
        BuildResult result = SheetBuild.run(
                file,
                Set.of(),
                OptionalDouble.of(40),
                Optional.empty(),
                StageClock.Listener.SILENT,
                kept,
                SheetReport::new);
        account = result.stages();
        Map<String, String> bytes = new TreeMap<>();
        for (Output output : result.outputs()) {
            bytes.put(output.kind(), new String(Files.readAllBytes(output.file()), StandardCharsets.ISO_8859_1));
        }
        bytes.put("findings", result.findings().toString());
        return bytes;
    }
}
