package org.adumbrate.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.adumbrate.cli.Cli;
import org.adumbrate.cli.DemoCopy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo, as it should look. */
class GoldenImagesTest {
    @TempDir
    private Path folder;

    /** Underlay alone: nothing but our own arithmetic, so it must be the same to a level. */
    @Test
    void kilnYardUnderlay() throws IOException {
        Path demo = DemoCopy.kilnYard(folder);
        Path picture = folder.resolve("underlay.png");
        Cli result = Cli.run(
                "merge",
                demo.resolve("lines.pdf").toString(),
                "--shadow",
                demo.resolve("shadow.jpg").toString(),
                "--occlusion",
                demo.resolve("occlusion.png").toString(),
                "--dpi",
                "50",
                "--output",
                picture.toString());
        assertThat(result.code()).as(result.err()).isZero();
        GoldenImage.check("kiln-yard-underlay", picture, new GoldenImage.Limits(0.02, 0, 2));
    }

    /** The whole sheet; lines are anti-aliased by the platform, which may round a level otherwise. */
    @Test
    void kilnYardPreview() throws IOException {
        Path demo = DemoCopy.kilnYard(folder);
        Cli result = Cli.run("build", demo.resolve("kiln-yard.sheet.yaml").toString(), "--only", "preview");
        assertThat(result.code()).as(result.err()).isZero();
        GoldenImage.check(
                "kiln-yard-preview", demo.resolve("out/preview.png"), new GoldenImage.Limits(0.05, 0.001, 60));
    }
}
