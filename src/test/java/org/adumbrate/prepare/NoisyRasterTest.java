package org.adumbrate.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.ImageIO;
import org.adumbrate.cli.Cli;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rasters of noise where regions should be: told in one line, with the place in the sheet file. */
class NoisyRasterTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void export() throws IOException {
        Files.writeString(folder.resolve("lines.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="200mm" viewBox="0 0 200 200" fill="none">
                <path stroke="#404048" d="M10 10H190V190H10Z"/></svg>
                """);
        BufferedImage noise = new BufferedImage(1600, 1600, BufferedImage.TYPE_BYTE_GRAY);
        Random random = new Random(1);
        for (int x = 0; x < 1600; x++) {
            for (int y = 0; y < 1600; y++) {
                noise.getRaster().setSample(x, y, 0, random.nextInt(100) < 60 ? 0 : 254);
            }
        }
        ImageIO.write(noise, "png", folder.resolve("noise.png").toFile());
    }

    private Cli build(String sheet) throws IOException {
        Path file = Files.writeString(folder.resolve("a.sheet.yaml"), sheet);
        return Cli.run("build", file.toString(), "--quiet");
    }

    private void assertTold(Cli result, String place, String corners, String remedy) {
        assertThat(result.code()).as(result.err()).isEqualTo(3);
        assertThat(result.err().trim())
                .doesNotContain("\n")
                .contains("a.sheet.yaml:" + place + ": ")
                .contains("noise.png: ")
                .contains("more than " + corners + " corners")
                .contains(remedy);
        assertThat(folder.resolve("a.png")).doesNotExist();
        // the folder is cleared after each test, which fails where something is still written into it
    }

    @Test
    void aRegionOfAColour() throws IOException {
        Cli result = build("""
                lines: lines.svg
                regions:
                  bed: [[10, 10], [20, 10], [20, 20]]
                  wall:
                    raster: noise.png
                    color: black
                deliver: { preview: a.png }
                """);
        assertTold(
                result, "5:13", "300000", "; render it in flat colours without noise or texture, or lower 'tolerance'");
    }

    @Test
    void aDepthPassBeforeAFigure() throws IOException {
        Cli result = build("""
                lines: lines.svg
                passes: { depth: { file: noise.png, near: 1 m, far: 100 m, frame: sheet } }
                floors: { yard: 0 m }
                camera: { focal: 200 mm, principal-point: [100, 90], eye-height: 1.6 m }
                figures: [{ outline: cyclist, foot: [100, 180] }]
                deliver: { preview: a.png }
                """);
        assertTold(result, "2:26", "20000", "; render the depth without noise");
    }
}
