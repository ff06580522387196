package org.adumbrate.linework.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.SheetPaths;
import org.adumbrate.linework.clip.FillRule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutlinedLinesTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            M 10 9.9 L 30 9.9 L 30 10.1 L 10 10.1 Z                      | M 10 10 L 30 10            | 0.2
            M 10 9.9 L 30 9.9 L 30 10.1 L 10 10.1 L 10 9.9 Z             | M 10 10 L 30 10            | 0.2
            M 10 10.1 L 10 9.9 L 30 9.9 L 30 10.1                        | M 10 10 L 30 10            | 0.2
            M 9.9 9.9 L 30.1 9.9 L 29.9 10.1 L 10.1 10.1 Z               | M 10 10 L 30 10            | 0.2
            M 10 9.9 L 30 9.9 L 30.1 10 L 30 10.1 L 10 10.1 L 9.9 10 Z   | M 10 10 L 30 10            | 0.2
            M 9.9 9.9 L 30.1 9.9 L 30.1 20 L 29.9 20 L 29.9 10.1 L 9.9 10.1 Z | M 9.9 10 L 30 10 L 30 20 | 0.2
            """)
    void aThinShapeIsALineAlongItsMiddle(String outline, String middle, double width) {
        OutlinedLines read = read(outline, FillRule.NON_ZERO);
        assertThat(read.rest().isEmpty()).isTrue();
        OutlinedLine line = read.lines().get(0);
        assertThat(Stroker.distance(line.middle(), page(middle))).isLessThan(1e-6);
        assertThat(line.widthMm()).isCloseTo(width, within(1e-6));
    }

    @Test
    void aCapsuleEndsAtTheMiddlesOfItsArcs() {
        double c = 0.1 * 0.5522847498;
        String capsule = "M 10 9.9 L 30 9.9 C " + (30 + c) + " 9.9 30.1 " + (10 - c) + " 30.1 10 C 30.1 " + (10 + c)
                + " "
                + (30 + c) + " 10.1 30 10.1 L 10 10.1 C " + (10 - c) + " 10.1 9.9 " + (10 + c) + " 9.9 10 C 9.9 "
                + (10 - c) + " " + (10 - c) + " 9.9 10 9.9 Z";
        OutlinedLine line = read(capsule, FillRule.NON_ZERO).lines().get(0);
        assertThat(Stroker.distance(line.middle(), page("M 10 10 L 30 10"))).isLessThan(1e-3);
        assertThat(line.cap()).isEqualTo(LineCap.ROUND);
    }

    @ParameterizedTest
    @CsvSource({"EVEN_ODD,false", "EVEN_ODD,true", "NON_ZERO,false"})
    void aRingIsAClosedLine(FillRule rule, boolean sameWay) {
        String inner = sameWay
                ? "M 10.1 10.1 L 29.9 10.1 L 29.9 19.9 L 10.1 19.9 Z"
                : "M 10.1 10.1 L 10.1 19.9 L 29.9 19.9 L 29.9 10.1 Z";
        OutlinedLines read = read("M 9.9 9.9 L 30.1 9.9 L 30.1 20.1 L 9.9 20.1 Z " + inner, rule);
        assertThat(read.rest().isEmpty()).isTrue();
        assertThat(read.lines()).hasSize(1);
        assertThat(read.lines().get(0).lengthMm()).isCloseTo(60, within(1e-6));
        assertThat(read.lines().get(0).middle().toString()).endsWith("Z");
    }

    @Test
    void aRingAsThinAsALineIsNoLineOfItsOwnWidth() {
        OutlinedLines read = read(
                "M 9.9 9.9 L 60.1 9.9 L 60.1 11.1 L 9.9 11.1 Z M 10.1 10.1 L 10.1 10.9 L 59.9 10.9 L 59.9 10.1 Z",
                FillRule.NON_ZERO);
        assertThat(read.lines()).hasSize(1);
        assertThat(read.lines().get(0).widthMm()).isCloseTo(0.2, within(1e-6));
        assertThat(read.lines().get(0).lengthMm()).isCloseTo(102, within(1e-6));
    }

    @Test
    void aFilledRingDrawnTheSameWayHasNoHoleByTheNonZeroRule() {
        OutlinedLines read = read(
                "M 10 10 L 30 10 L 30 20 L 10 20 Z M 10.2 10.2 L 29.8 10.2 L 29.8 19.8 L 10.2 19.8 Z",
                FillRule.NON_ZERO);
        assertThat(read.lines()).isEmpty();
        assertThat(read.rest().isEmpty()).isFalse();
    }

    @Test
    void linesThatBranchMeetWhereTheyCross() {
        OutlinedLines read = read(
                "M 10 9.9 L 30 9.9 L 30 10.1 L 20.1 10.1 L 20.1 25 L 19.9 25 L 19.9 10.1 L 10 10.1 Z",
                FillRule.NON_ZERO);
        assertThat(read.lines()).hasSize(1);
        assertThat(Stroker.distance(read.lines().get(0).middle(), page("M 10 10 L 30 10 M 20 10 L 20 25")))
                .isLessThan(1e-6);
        assertThat(read.lines().get(0).lengthMm()).isCloseTo(35, within(1e-6));
    }

    @Test
    void aPathOfManyShapesIsTakenApart() {
        OutlinedLines read = read(
                "M 10 9.9 L 30 9.9 L 30 10.1 L 10 10.1 Z M 50 50 L 90 50 L 90 80 L 50 80 Z M 9.9 20 L 9.9 40 L 10.1 40 L 10.1 20 Z",
                FillRule.EVEN_ODD);
        assertThat(read.lines())
                .extracting(line -> line.middle().toString())
                .containsExactly("M 10.0 10.0 L 30.0 10.0", "M 10.0 20.0 L 10.0 40.0");
        assertThat(read.rest()).hasToString("M 50.0 50.0 L 90.0 50.0 L 90.0 80.0 L 50.0 80.0 Z");
    }

    @Test
    void aSlotInAnAreaIsNoLine() {
        OutlinedLines read =
                read("M 50 50 L 90 50 L 90 80 L 50 80 Z M 60 60 L 60 60.2 L 80 60.2 L 80 60 Z", FillRule.NON_ZERO);
        assertThat(read.lines()).isEmpty();
        assertThat(read.rest().runs()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({
        "M 10 10 L 30 10 L 20 10.3 Z",
        "M 10 10 L 30 10 L 30 10.1 L 10 10.4 Z",
        "M 10 10 L 210 10 L 210 13 L 10 13 Z",
        "M 10 10 L 12 10 L 12 12 L 10 12 Z",
        "M 10 9.9 L 28 9.9 L 28 9.5 L 30 10 L 28 10.5 L 28 10.1 L 10 10.1 Z",
        "M 10 9.9 L 20 9.9 L 20 9 L 22 9 L 22 9.9 L 30 9.9 L 30 10.1 L 10 10.1 Z",
        "M 10 10 C 14 9 26 9 30 10 C 26 11 14 11 10 10 Z"
    })
    void whatIsNoLineStaysAnArea(String outline) {
        OutlinedLines read = read(outline, FillRule.NON_ZERO);
        LineOrArea judge = new LineOrArea(
                read.lines(), read.lines().stream().map(line -> Srgb.BLACK).toList(), new SharedSides(read.lines()));
        assertThat(read.lines()).allSatisfy(line -> assertThat(judge.line(line, Srgb.BLACK, false))
                .isEmpty());
    }

    private static OutlinedLines read(String outline, FillRule rule) {
        return OutlinedLines.of(page(outline), rule);
    }

    private static VectorPath<PagePoint> page(String text) {
        return SheetPaths.path(Space.PAGE, text);
    }
}
