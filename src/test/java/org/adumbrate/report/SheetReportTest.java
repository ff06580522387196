package org.adumbrate.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.Set;
import org.adumbrate.cli.DemoCopy;
import org.adumbrate.delivery.BuildResult;
import org.adumbrate.delivery.Output;
import org.adumbrate.delivery.SheetBuild;
import org.adumbrate.fault.Refusal;
import org.adumbrate.prepare.memory.StageClock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetReportTest {
    private static final String SHEET = """
            size: 17 x 11 in
            lines: lines.pdf
            heights: { lines: lines-people-height.pdf, color: "#e60028", height: 1.65 m }
            passes: { occlusion: { file: occlusion.png, opacity: 45 } }
            floors: { yard: 0 m, studio: 0.15 m, terrace: 0.75 m, upper: 3.35 m }
            camera: { focal: 260 mm }
            sun: { azimuth: 190, altitude: 47, north: 24 }
            pens:
              building: { color: "#404048", role: building }
              trees: { color: "#963ca0", dash: [1.6, 0.8] }
            cut: { color: "#000000", hatch: { spacing: 1.5 } }
            veils:
              panes: { color: "#00aabe", opacity: 20 }
            figures:
              - { outline: standing, foot: [334.8, 228.3], floor: yard }
            deliver: { report: out/report.html, preview: out/preview.png }
            """;

    @TempDir
    private Path folder;

    private String report(String name) throws IOException, Refusal {
        Path copy = DemoCopy.kilnYard(folder.resolve(name));
        Path file = copy.resolve("studio.sheet.yaml");
        Files.writeString(file, SHEET);
        BuildResult result =
                SheetBuild.run(file, Set.of(), OptionalDouble.of(40), StageClock.Listener.SILENT, SheetReport::new);
        assertThat(result.outputs()).extracting(Output::kind).containsExactly("preview", "report");
        Path report = copy.resolve("out").resolve("report.html");
        assertThat(result.outputs().get(1).bytes())
                .isEqualTo(Files.size(report))
                .isLessThan(3_000_000);
        return Files.readString(report);
    }

    @Test
    void tellsHowTheSheetWasMadeWhereverItLies() throws IOException, Refusal {
        String html = report("here");
        assertThat(html)
                .contains("<h1>studio</h1>")
                .contains("<h3>occlusion.png</h3>", "<h3>Shadows of the figures</h3>")
                .contains("Aligned", "Where they disagree most")
                .contains("its angles, as the sheet file states them", "the figure 'standing' on the floor 'yard'")
                .contains(
                        "other · 0.25 mm, black, dashed 1.6 – 0.8 mm",
                        "every 1.5 mm at 45°",
                        "white fill that hides 20")
                .contains("<th scope=\"row\">out/preview.png</th>")
                .doesNotContain(folder.toString());
        assertThat(report("there")).isEqualTo(html);
    }
}
