package org.adumbrate.prepare.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.adumbrate.drawing.Mark;
import org.adumbrate.fault.Refusal;
import org.adumbrate.prepare.SheetsForTests;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pens that fade, over a depth pass that goes evenly from 10 m on the left to 100 m on the right. */
class FadingPensTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void export() throws IOException {
        BufferedImage depth = new BufferedImage(254, 100, BufferedImage.TYPE_BYTE_GRAY);
        for (int x = 0; x < 254; x++) {
            for (int y = 0; y < 100; y++) {
                depth.getRaster().setSample(x, y, 0, x);
            }
        }
        ImageIO.write(depth, "png", folder.resolve("depth.png").toFile());
        // the building from 19 to 55 m, furniture in a part of it, paving everywhere
        Files.writeString(folder.resolve("lines.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="254mm" height="100mm" viewBox="0 0 254 100" fill="none">
                <path stroke="#404048" d="M25.4 10H127"/>
                <path stroke="#0060a8" d="M60 20H90"/>
                <path stroke="#b07800" d="M0 90H254"/></svg>
                """);
    }

    @Test
    void fadeFromTheNearestToTheFarthestOfTheirLines() throws IOException, Refusal {
        List<Double> widths = widths("building", ", fades: 50", "");
        assertThat(widths).hasSize(8);
        assertThat(widths.get(0)).isCloseTo(0.2, within(1e-9));
        assertThat(widths.get(7)).isCloseTo(0.4, within(1e-9));
    }

    @Test
    void fadeAllAlike() throws IOException, Refusal {
        assertThat(widths("furniture", "", ", fades: 50")).hasSize(8);
        assertThat(widths("furniture", ", fades: 50", ", fades: 50")).hasSizeBetween(2, 4);
    }

    @Test
    void aHiddenPenStretchesNoScale() throws IOException, Refusal {
        assertThat(widths("building", ", fades: 50", ", fades: 50, hidden: true"))
                .hasSize(8);
    }

    private List<Double> widths(String layer, String building, String furniture) throws IOException, Refusal {
        Path sheet = Files.writeString(folder.resolve("a.sheet.yaml"), """
                lines: lines.svg
                passes: { depth: { file: depth.png, near: 10 m, far: 100 m, frame: sheet } }
                pens:
                  building: { color: "#404048", width: 0.4%s }
                  furniture: { color: "#0060a8", width: 0.4%s }
                  paving: { color: "#b07800" }
                deliver: { preview: out/a.png }
                """.formatted(building, furniture));
        return SheetsForTests.prepared(sheet).layers().stream()
                .filter(one -> one.name().equals(layer))
                .flatMap(one -> one.marks().stream())
                .map(mark -> ((Mark.Lines) mark).pen().widthMm())
                .toList();
    }
}
