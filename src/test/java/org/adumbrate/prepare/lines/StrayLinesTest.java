package org.adumbrate.prepare.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.SheetPaths;
import org.adumbrate.prepare.finding.Finding;
import org.junit.jupiter.api.Test;

class StrayLinesTest {
    private static final Srgb BROWN = new Srgb(120, 84, 40);
    private static final Srgb SHADE = new Srgb(121, 82, 40);
    private static final Srgb RED = new Srgb(230, 0, 40);

    private final StrayLines strays = new StrayLines();

    private void line(Srgb color, double widthMm, double lengthMm) {
        strays.add(color, widthMm, SheetPaths.line(0, 0, lengthMm, 0));
    }

    private List<String> told() {
        return strays.findings().stream().map(Finding::text).toList();
    }

    @Test
    void shadesAreToldOnceByTheColourDrawnMostWithAllThatTheyDraw() {
        line(SHADE, 0.2, 10);
        line(SHADE, 0.2, 10);
        line(BROWN, 0.2, 70.6);
        line(RED, 0.2, 30);
        assertThat(told())
                .containsExactly(
                        "pens: none for #785428 and a shade of it, the colour of 3 strokes, 91 mm in all; they are drawn in their"
                                + " own colour and width; add a pen with color: \"#785428\"",
                        "pens: none for #e60028, the colour of 1 stroke, 30 mm in all; they are drawn in their"
                                + " own colour and width; add a pen with color: \"#e60028\"");
    }

    @Test
    void aFamilyIsALayerAndEveryShadeIsDrawnAsItIs() {
        line(SHADE, 0.4, 10);
        line(BROWN, 0.02, 70);
        line(BROWN, 0.2, 5);
        line(SHADE, 0.3, 10);
        Layer layer = strays.layers().get(0);
        assertThat(strays.layers()).hasSize(1);
        assertThat(layer.name()).isEqualTo("lines-785428");
        List<Mark.Lines> marks =
                layer.marks().stream().map(Mark.Lines.class::cast).toList();
        assertThat(marks).extracting(mark -> mark.pen().ink()).containsExactly(BROWN, SHADE);
        assertThat(marks).extracting(mark -> mark.pen().widthMm()).containsExactly(0.2, 0.4);
        assertThat(marks).extracting(mark -> mark.paths().size()).containsExactly(2, 2);
    }

    /** Every stroke of two colours shifted by up to two levels, as exporters do. */
    @Test
    void noisyColoursAreTwoFamilies() {
        Random random = new Random(3);
        for (int k = 0; k < 1000; k++) {
            Srgb of = k % 2 == 0 ? BROWN : RED;
            line(
                    new Srgb(noisy(of.red(), random), noisy(of.green(), random), noisy(of.blue(), random)),
                    0.1,
                    1 + k % 7);
        }
        assertThat(told()).hasSize(2).allSatisfy(text -> assertThat(text).contains("the colour of 500 strokes, "));
        assertThat(strays.layers().stream()
                        .flatMap(layer -> layer.marks().stream())
                        .flatMap(mark -> ((Mark.Lines) mark).paths().stream())
                        .mapToDouble(VectorPath::length)
                        .sum())
                .isCloseTo(3997, within(1e-6));
    }

    private static int noisy(int level, Random random) {
        return Math.max(0, Math.min(255, level + random.nextInt(5) - 2));
    }

    @Test
    void nothingStrayIsNothingToTell() {
        assertThat(told()).isEmpty();
        assertThat(strays.layers()).isEmpty();
    }
}
