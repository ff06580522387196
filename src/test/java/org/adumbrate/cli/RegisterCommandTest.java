package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Registration as it is asked for at the desk: alone, with a picture, pinned, and on the way to an underlay. */
class RegisterCommandTest {
    @TempDir
    private Path folder;

    private Path demo;

    @BeforeEach
    void prepare() throws IOException {
        demo = DemoCopy.kilnYard(folder);
    }

    private Path write(String name, BufferedImage image) throws IOException {
        Path file = folder.resolve(name);
        ImageIO.write(image, "png", file.toFile());
        return file;
    }

    private BufferedImage shadow() throws IOException {
        return ImageIO.read(demo.resolve("shadow.jpg").toFile());
    }

    private static BufferedImage mirrored(BufferedImage image) {
        BufferedImage mirror = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        mirror.createGraphics().drawImage(image, image.getWidth(), 0, -image.getWidth(), image.getHeight(), null);
        return mirror;
    }

    /** The demo's renders fill a sheet 431.8 mm wide: 431.8 / 3400 and 431.8 / 2550 mm to the pixel. */
    @Test
    void theDemosPassesFillTheirSheet() throws IOException {
        Path json = folder.resolve("placements.json");
        Cli result = Cli.run(
                "register",
                demo.resolve("lines.pdf").toString(),
                demo.resolve("shadow.jpg").toString(),
                demo.resolve("occlusion.png").toString(),
                "--json",
                json.toString());
        assertThat(result.code()).as(result.err()).isZero();
        JsonNode tree = new ObjectMapper().readTree(json.toFile());
        assertThat(tree.at("/sheet/widthMm").asDouble()).isEqualTo(431.8);
        double[] perPixel = {431.8 / 3400, 431.8 / 2550};
        for (int k = 0; k < 2; k++) {
            JsonNode placement = tree.at("/placements/" + k);
            assertThat(placement.at("/status").asText()).isEqualTo("aligned");
            assertThat(placement.at("/explains").asText()).isEqualTo("same-ratio");
            assertThat(placement.at("/passToSheet/0/0").asDouble())
                    .isCloseTo(perPixel[k], org.assertj.core.api.Assertions.within(1e-5));
            assertThat(placement.at("/passToSheet/1/2").asDouble())
                    .isCloseTo(0, org.assertj.core.api.Assertions.within(0.02));
        }
    }

    @Test
    void aMirroredPassIsRefusedWithThatReasonAndAPicture() throws IOException {
        Path pass = write("mirrored.png", mirrored(shadow()));
        Path picture = folder.resolve("why.png");
        Cli result = Cli.run(
                "register", demo.resolve("lines.pdf").toString(), pass.toString(), "--picture", picture.toString());
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.out()).contains("refused").contains("mirrored");
        assertThat(ImageIO.read(picture.toFile()).getWidth()).isEqualTo(2400);
    }

    @Test
    void aMergeRefusesAPassThatDoesNotBelongAndWritesNothing() throws IOException {
        Path pass = write("mirrored.png", mirrored(shadow()));
        Path output = folder.resolve("underlay.tif");
        Cli result = Cli.run(
                "merge",
                demo.resolve("lines.pdf").toString(),
                "--shadow",
                pass.toString(),
                "--output",
                output.toString());
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.err().trim())
                .doesNotContain("\n")
                .contains("mirrored")
                .contains("--picture");
        assertThat(output).doesNotExist();
    }

    @Test
    void aPassWithBarsIsCutBackToItsView() throws IOException {
        BufferedImage shadow = shadow();
        BufferedImage barred = new BufferedImage(3400, 2500, BufferedImage.TYPE_INT_RGB);
        barred.createGraphics().drawImage(shadow, 0, 140, null);
        Path pass = write("barred.png", barred);
        Path json = folder.resolve("placements.json");
        Cli result =
                Cli.run("register", demo.resolve("lines.pdf").toString(), pass.toString(), "--json", json.toString());
        assertThat(result.code()).as(result.out()).isZero();
        JsonNode placement = new ObjectMapper().readTree(json.toFile()).at("/placements/0");
        assertThat(placement.at("/explains").asText()).isEqualTo("bars");
        assertThat(placement.at("/passToSheet/1/2").asDouble())
                .as("the view begins 140 pixels down")
                .isCloseTo(-140 * 0.127, org.assertj.core.api.Assertions.within(0.02));
    }

    @Test
    void aPinnedPassStaysWhereItIsPinnedAndTheDoubtIsTold() throws IOException {
        Path sheet = demo.resolve("kiln-yard.sheet.yaml");
        String text = Files.readString(sheet);
        String pinned = text.replace(
                "file: shadow.jpg, opacity: 60", "file: shadow.jpg, opacity: 60, frame: [3, 0, 431.8, 279.4]");
        assertThat(pinned).isNotEqualTo(text);
        Files.writeString(sheet, pinned);
        Path json = folder.resolve("build.json");
        Cli result = Cli.run("build", sheet.toString(), "--only", "preview", "--json", json.toString());
        assertThat(result.code()).as(result.err()).isZero();
        JsonNode placement = new ObjectMapper().readTree(json.toFile()).at("/placements/0");
        assertThat(placement.at("/passToSheet/0/2").asDouble()).isEqualTo(3);
        assertThat(result.err())
                .contains("warning:")
                .contains("placed where it is pinned, though")
                .contains("3.00 mm");
    }
}
