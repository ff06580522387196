package org.adumbrate.linework.cleanup;

import static org.adumbrate.linework.cleanup.CleanUpSettings.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.SheetPaths;
import org.junit.jupiter.api.Test;

class CleanUpTest {
    @Test
    void aLineDrawnTwiceIsDrawnOnceWhicheverWayItRuns() {
        Cleaned cleaned = CleanUp.run(SheetPaths.of("M 1 1 L 9 4", "M 9 4 L 1 1", "M 1 1 L 9 4"), STANDARD);
        assertThat(cleaned.paths()).containsExactlyElementsOf(SheetPaths.of("M 1 1 L 9 4"));
        assertThat(cleaned.counts()).isEqualTo(new CleanUpCounts(2, 0, 0, 0));
    }

    @Test
    void overlappingPiecesOfOneLineBecomeOneLine() {
        Cleaned cleaned = CleanUp.run(SheetPaths.of("M 0 5 L 10 5", "M 14 5 L 8 5", "M 12 5 L 13 5"), STANDARD);
        assertThat(cleaned.paths()).containsExactlyElementsOf(SheetPaths.of("M 0 5 L 14 5"));
        assertThat(cleaned.counts()).isEqualTo(new CleanUpCounts(2, 1, 0, 0));
    }

    @Test
    void gapsUpToTheLimitAreClosedAndWiderOnesStay() {
        Cleaned cleaned = CleanUp.run(SheetPaths.of("M 0 0 L 5 0", "M 5.09 0 L 8 0", "M 8.11 0 L 9 0"), STANDARD);
        assertThat(cleaned.paths()).containsExactlyElementsOf(SheetPaths.of("M 0 0 L 8 0", "M 8.11 0 L 9 0"));
        assertThat(cleaned.counts().joined()).isEqualTo(1);
    }

    @Test
    void piecesThatMeetAtCornersBecomeOneClosedPath() {
        Cleaned cleaned =
                CleanUp.run(SheetPaths.of("M 0 0 L 4 0", "M 4 3 L 4 0", "M 0 3 L 0 0", "M 4 3 L 0 3"), STANDARD);
        assertThat(cleaned.paths()).hasSize(1);
        assertThat(cleaned.paths().get(0)).hasToString("M 0.0 0.0 L 4.0 0.0 L 4.0 3.0 L 0.0 3.0 Z");
        assertThat(cleaned.counts()).isEqualTo(CleanUpCounts.NONE);
    }

    @Test
    void cornersThatMissEachOtherByALittleMeetWhereTheLinesCross() {
        Cleaned cleaned = CleanUp.run(SheetPaths.of("M 0 0 L 3.95 0", "M 4 3 L 4 0.06"), STANDARD);
        assertThat(cleaned.paths()).containsExactlyElementsOf(SheetPaths.of("M 0 0 L 4 0 L 4 3"));
    }

    @Test
    void whereThreeMeetTheStraighterTwoGoOn() {
        Cleaned cleaned = CleanUp.run(SheetPaths.of("M 0 0 L 5 0", "M 5 0 L 9 4", "M 5 0 L 9 1"), STANDARD);
        assertThat(cleaned.paths()).containsExactlyElementsOf(SheetPaths.of("M 0 0 L 5 0 L 9 1", "M 5 0 L 9 4"));
    }

    @Test
    void linesThatCrossAreLeftAlone() {
        List<VectorPath<SheetPoint>> cross = SheetPaths.of("M 0 0 L 8 8", "M 0 8 L 8 0", "M 0 3 L 9 3.2");
        assertThat(CleanUp.run(cross, STANDARD)).isEqualTo(new Cleaned(cross, CleanUpCounts.NONE));
    }

    @Test
    void aPairThatAPrintCanJustShowStaysAPair() {
        List<VectorPath<SheetPoint>> pair = SheetPaths.of("M 0 0 L 20 0", "M 0 0.07 L 20 0.07");
        assertThat(CleanUp.run(pair, STANDARD)).isEqualTo(new Cleaned(pair, CleanUpCounts.NONE));
        CleanUpSettings coarse = new CleanUpSettings(0.08, 0.1, 0.2, 0.1);
        assertThat(CleanUp.run(pair, coarse).counts().merged()).isEqualTo(1);
    }

    @Test
    void ofADenseBundleEnoughLinesStayToKeepTheLimitAndTheOutermostAlways() {
        List<VectorPath<SheetPoint>> bundle = new ArrayList<>(IntStream.range(0, 10)
                .mapToObj(n -> SheetPaths.line(0, 3 + 0.06 * n, 30, 3 + 0.06 * n))
                .toList());
        Collections.shuffle(bundle, new Random(3));
        Cleaned cleaned = CleanUp.run(bundle, STANDARD);
        double[] kept = SheetPaths.segments(cleaned.paths()).stream()
                .mapToDouble(line -> line[1])
                .sorted()
                .toArray();
        assertThat(kept).containsExactly(new double[] {3, 3.12, 3.24, 3.36, 3.48, 3.54}, within(1e-9));
        assertThat(cleaned.counts()).isEqualTo(new CleanUpCounts(0, 0, 0, 4));
    }

    @Test
    void aBundleThatClosesLosesItsInnerLinesOnlyWhereItIsDense() {
        // 1 mm apart at x = 0, 0.05 mm apart at x = 38, closer than 0.1 mm from x = 36 on
        Cleaned cleaned = CleanUp.run(SheetPaths.of("M 0 4 L 38 5.9", "M 0 5 L 38 5.95", "M 0 6 L 38 6"), STANDARD);
        List<double[]> kept = SheetPaths.segments(cleaned.paths());
        assertThat(kept).hasSize(3);
        assertThat(kept.get(2)).containsExactly(new double[] {0, 5, 36, 5.9}, within(0.01));
        assertThat(cleaned.counts().thinned()).isEqualTo(1);
    }

    @Test
    void aFreeFragmentIsDroppedAndOneThatTouchesALineStays() {
        Cleaned cleaned = CleanUp.run(
                SheetPaths.of("M 0 0 L 10 0", "M 3 0 L 3 0.15", "M 5 4 L 5.1 4.1", "M 7 7 L 7 7"), STANDARD);
        assertThat(cleaned.paths()).containsExactlyElementsOf(SheetPaths.of("M 0 0 L 10 0", "M 3 0 L 3 0.15"));
        assertThat(cleaned.counts()).isEqualTo(new CleanUpCounts(0, 0, 2, 0));
    }

    @Test
    void aFragmentThatTouchesALargeArcStays() {
        // a quarter of a circle of 200 mm; the fragment stands on it at 50.6 degrees, where eight chords would miss it
        // by 0.2 mm
        double k = 200 * 4 / 3.0 * (Math.sqrt(2) - 1);
        double angle = Math.toRadians(50.6);
        double x = 200 * Math.cos(angle);
        double y = 200 * Math.sin(angle);
        List<VectorPath<SheetPoint>> lines = SheetPaths.of(
                "M 200 0 C 200 " + k + " " + k + " 200 0 200",
                "M " + x + " " + y + " L " + x * 1.0005 + " " + y * 1.0005);
        assertThat(CleanUp.run(lines, STANDARD).counts().dropped()).isZero();
    }

    @Test
    void shortPiecesOfALongChainStay() {
        VectorPath.Builder<SheetPoint> ring = VectorPath.in(Space.SHEET);
        ring.moveTo(20.5, 20);
        for (int n = 1; n < 24; n++) {
            ring.lineTo(20 + 0.5 * Math.cos(n * Math.PI / 12), 20 + 0.5 * Math.sin(n * Math.PI / 12));
        }
        ring.close();
        Cleaned cleaned = CleanUp.run(List.of(ring.build()), STANDARD);
        assertThat(cleaned.paths()).hasSize(1);
        // every side is kept or, where two are nearly straight, lies within a hundredth of a millimetre
        assertThat(cleaned.paths().get(0).length()).isCloseTo(ring.build().length(), within(0.02));
        assertThat(cleaned.counts().dropped()).isZero();
    }

    @Test
    void anyNumberOfCurvesIsTakenUp() {
        List<VectorPath<SheetPoint>> curves = IntStream.range(0, 200)
                .mapToObj(n -> SheetPaths.path("M " + n + " 0 C " + n + " 1 " + (n + 1) + " 3 " + (n + 3) + " 3"))
                .toList();
        assertThat(CleanUp.run(curves, STANDARD).paths()).containsExactlyElementsOf(curves);
    }

    @Test
    void equalCurvesAreDrawnOnceAndStayCurves() {
        Cleaned cleaned = CleanUp.run(
                SheetPaths.of("M 0 0 C 1 2 3 2 4 0 L 8 0", "M 4 0 C 3 2 1 2 0 0", "M 0 0 C 1 2.2 3 2.2 4 0"), STANDARD);
        assertThat(cleaned.paths())
                .containsExactlyElementsOf(SheetPaths.of("M 4 0 C 3 2.2 1 2.2 0 0 C 1 2 3 2 4 0 L 8 0"));
        assertThat(cleaned.counts()).isEqualTo(new CleanUpCounts(1, 0, 0, 0));
    }

    @Test
    void aCurveThatRunsStraightIsALine() {
        Cleaned cleaned = CleanUp.run(SheetPaths.of("M 0 0 C 1 0 2 0 4 0", "M 1 0 L 9 0"), STANDARD);
        assertThat(cleaned.paths()).containsExactlyElementsOf(SheetPaths.of("M 0 0 L 9 0"));
    }

    @Test
    void aClosedCurveStaysClosed() {
        List<VectorPath<SheetPoint>> loop = SheetPaths.of("M 0 0 C 4 4 -4 4 0 0 Z");
        assertThat(CleanUp.run(loop, STANDARD).paths()).containsExactlyElementsOf(loop);
    }

    @Test
    void eachStepHasItsSwitch() {
        List<VectorPath<SheetPoint>> mess = SheetPaths.of(
                "M 0 0 L 5 0",
                "M 0 0 L 5 0",
                "M 5.05 0 L 9 0",
                "M 3 3 L 3.1 3",
                "M 7 7 L 7 7",
                "M 0 5 L 9 5",
                "M 0 5.06 L 9 5.06",
                "M 0 5.12 L 9 5.12");
        assertThat(CleanUp.run(mess, STANDARD).counts()).isEqualTo(new CleanUpCounts(1, 1, 2, 1));
        assertThat(CleanUp.run(mess, new CleanUpSettings(0, 0.1, 0.2, 0.1))
                        .counts()
                        .merged())
                .isZero();
        assertThat(CleanUp.run(mess, new CleanUpSettings(0.05, 0, 0.2, 0.1)).counts())
                .isEqualTo(new CleanUpCounts(1, 0, 2, 1));
        assertThat(CleanUp.run(mess, new CleanUpSettings(0.05, 0.1, 0, 0.1)).counts())
                .isEqualTo(new CleanUpCounts(1, 1, 0, 1));
        assertThat(CleanUp.run(mess, new CleanUpSettings(0.05, 0.1, 0.2, 0)).counts())
                .isEqualTo(new CleanUpCounts(1, 1, 2, 0));
        assertThat(CleanUp.run(mess, CleanUpSettings.OFF)).isEqualTo(new Cleaned(mess, CleanUpCounts.NONE));
    }

    @Test
    void nothingComesOfNothing() {
        assertThat(CleanUp.run(List.of(), STANDARD)).isEqualTo(new Cleaned(List.of(), CleanUpCounts.NONE));
    }

    @Test
    void aLengthThatIsNoneIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CleanUpSettings(0.05, -1, 0, 0))
                .withMessage("join must be 0 to 10.0 mm, not -1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> new CleanUpSettings(Double.NaN, 0, 0, 0));
    }
}
