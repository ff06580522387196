package org.adumbrate.linework.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class SvgAreaTest {
    @TempDir
    Path folder;

    private Region<PagePoint> area(String content) throws IOException {
        return area("", content);
    }

    private Region<PagePoint> area(String attributes, String content) throws IOException {
        return SvgArea.read(file(attributes, content));
    }

    private Path file(String attributes, String content) throws IOException {
        return Files.writeString(
                Files.createTempFile(folder, "outline", ".svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' " + attributes + ">" + content + "</svg>");
    }

    @Test
    void shapesOfAllKindsAreUnited() throws IOException {
        Region<PagePoint> area = area("<rect x='-5' y='-10' width='10' height='10'/>"
                + "<polygon points='5,-10 15,-10 15,0 5,0'/>"
                + "<g transform='translate(100 0) scale(2)'><circle cx='0' cy='-10' r='5'/></g>"
                + "<ellipse cx='200' cy='0' rx='4' ry='2'/>"
                + "<path d='M300 0 a 10 10 0 0 1 20 0 z'/>");
        assertThat(area.pieces()).hasSize(4);
        double expected = 200 + Math.PI * (100 + 8 + 50);
        assertThat(area.area()).isCloseTo(expected, within(0.002 * expected));
    }

    @Test
    void userUnitsAreKeptWhateverThePageSays() throws IOException {
        Region<PagePoint> area = area(
                "width='50mm' height='20mm' viewBox='-30 -1000 60 1010'",
                "<rect x='-20' y='-1000' width='40' height='1000'/>");
        assertThat(area.extent().orElseThrow().top()).isEqualTo(-1000);
        assertThat(area.extent().orElseThrow().right()).isEqualTo(20);
    }

    @Test
    void theFillRuleIsKept() throws IOException {
        String rings = "M0 0h10v10h-10z M2 2h4v4h-4z";
        assertThat(area("<path d='" + rings + "'/>").area()).isCloseTo(100, within(1e-9));
        assertThat(area("<path fill-rule='evenodd' d='" + rings + "'/>").area()).isCloseTo(84, within(1e-9));
    }

    @Test
    void whatIsNotSeenCountsForNothing() throws IOException {
        Region<PagePoint> area = area("<defs><rect width='500' height='500'/></defs>"
                + "<rect width='900' height='9' fill='none'/><rect width='9' height='900' fill-opacity='0'/>"
                + "<rect width='700' height='70' display='none'/><text>A</text><rect width='2' height='3'/>");
        assertThat(area.area()).isCloseTo(6, within(1e-9));
    }

    @Test
    void closedStrokesCountWhereNothingIsFilled() throws IOException {
        String strokes = "<g fill='none' stroke='black'><path d='M0 0h10v10h-10z'/><path d='M50 0h10v10'/></g>";
        assertThat(area(strokes).area()).isCloseTo(100, within(1e-9));
        assertThat(area(strokes + "<rect x='90' width='1' height='1'/>").area()).isCloseTo(1, within(1e-9));
    }

    @Test
    void whatHoldsNoShapeIsAtFault() throws IOException {
        Path empty = file("", "<text>A</text><path fill='none' stroke='red' d='M0 0 L 5 5'/>");
        assertThatThrownBy(() -> SvgArea.read(empty))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("holds no filled shape");
        assertThatThrownBy(() -> SvgArea.read(folder.resolve("none.svg")))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("does not exist");
        assertThatThrownBy(() -> SvgArea.read(folder))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("is a folder");
        Path text = Files.writeString(folder.resolve("text.svg"), "no markup");
        assertThatThrownBy(() -> SvgArea.read(text)).isInstanceOf(InputFault.class);
    }

    @Test
    @Timeout(20)
    void scribbleIsRefusedInTime() throws IOException {
        Random random = new Random(1);
        StringBuilder path = new StringBuilder("M0 0");
        for (int k = 0; k < 40_000; k++) {
            path.append(' ').append(random.nextInt(100_000)).append(' ').append(random.nextInt(100_000));
        }
        for (String rule : new String[] {"evenodd", "nonzero"}) {
            Path scribble = file("", "<path fill-rule='" + rule + "' d='" + path + "'/>");
            assertThatThrownBy(() -> SvgArea.read(scribble))
                    .isInstanceOf(InputFault.class)
                    .hasMessageContaining("cross each other");
        }
    }

    @Test
    void tooIntricateADrawingIsRefused() throws IOException {
        Path many = file("", "<path d='M0 0" + "h1v1h-1z".repeat(30_000) + "'/>");
        assertThatThrownBy(() -> SvgArea.read(many))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("100000 pieces of outline");
    }
}
