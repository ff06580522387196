package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Somebody on a floor at the left of a bench, with a partition at the right of it, in a sun that stands straight to the left, 45 degrees high: on
 * the level of the feet the shadow would reach 75 mm to the right.
 */
class ShadowsWithoutDepthTest {
    private static final int FOOT_Y = 120;
    private static final double PX_PER_MM = 100 / 25.4;

    @TempDir
    private Path folder;

    private Raster shadow(String lines, String pens, String floor) throws IOException {
        Files.writeString(folder.resolve("lines.svg"), """
                <svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='150mm' viewBox='0 0 200 150' fill='none'>
                <path stroke='#404040' d='M5 140H195L150 80H50Z'/>
                <path stroke='#0000ff' d='M110 116H130V124H110Z'/>
                %s</svg>
                """.formatted(lines));
        Path file = Files.writeString(folder.resolve("a.sheet.yaml"), """
                lines: lines.svg
                floors: { court: %s }
                camera: { focal: 100 mm, principal-point: [100, 50], eye-height: 1.6 m }
                sun: { azimuth: 270, altitude: 45 }
                pens:
                  building: { color: "#404040", role: building }
                  furniture: { color: "#0000ff", role: furniture }
                  %s
                figures:
                  - { outline: standing, foot: [95, 120], floor: court }
                deliver: { figure-shadow: out/shadow.png }
                """.formatted(floor, pens));
        assertThat(Cli.run("build", file.toString(), "--dpi", "100").code()).isZero();
        return ImageIO.read(folder.resolve("out/shadow.png").toFile()).getRaster();
    }

    private static double light(Raster shadow, double xMm, double yMm) {
        return shadow.getSample((int) (xMm * PX_PER_MM), (int) (yMm * PX_PER_MM), 0) / 65535.0;
    }

    @Test
    void theyFallOnTheFloorAndNotOnWhatStandsOnIt() throws IOException {
        Raster shadow = shadow("", "", "0 m");
        assertThat(light(shadow, 103, FOOT_Y)).as("beside the feet").isLessThan(0.2);
        assertThat(light(shadow, 120, FOOT_Y)).as("on the bench").isEqualTo(1);
        assertThat(light(shadow, 135, FOOT_Y)).as("beyond the bench").isLessThan(0.5);
    }

    @Test
    void theyEndAtAPartitionAndGoOnOverJointsOfPaving() throws IOException {
        Raster shadow = shadow(
                "<path stroke='#c08000' d='M105 80V140'/><path stroke='#404040' d='M133 70V140'/>",
                "paving: { color: \"#c08000\", role: paving }",
                "0 m");
        assertThat(light(shadow, 107, FOOT_Y)).as("beyond a joint").isLessThan(0.2);
        assertThat(light(shadow, 136, FOOT_Y)).as("beyond the partition").isEqualTo(1);
    }

    @Test
    void aStatedOutlineHolds() throws IOException {
        Raster shadow = shadow("", "", "{ elevation: 0 m, outline: [[90, 100], [125, 100], [125, 140], [90, 140]] }");
        assertThat(light(shadow, 120, FOOT_Y)).as("within").isLessThan(0.5);
        assertThat(light(shadow, 135, FOOT_Y)).as("beyond").isEqualTo(1);
    }
}
