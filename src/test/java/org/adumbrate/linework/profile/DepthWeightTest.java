package org.adumbrate.linework.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.SheetPaths;
import org.junit.jupiter.api.Test;

class DepthWeightTest {
    private static final Fade FADE = new Fade(10, 30, 0.3, 0.3);

    @Test
    void aLineThatRunsIntoTheDistanceBecomesLighterInEightSteps() {
        // 10 m away at x = 0, 30 m at x = 100
        List<WeightedLines> lines = DepthWeight.of(SheetPaths.of("M 0 5 L 100 5"), point -> 10 + 0.2 * point.x(), FADE);
        assertThat(lines).hasSize(8);
        assertThat(lines.get(0).share()).isEqualTo(0.3, within(1e-12));
        assertThat(lines.get(7).share()).isEqualTo(1);
        double end = 100;
        for (WeightedLines one : lines) {
            double[] piece = SheetPaths.segments(one.paths()).get(0);
            assertThat(one.paths()).hasSize(1);
            assertThat(piece[2]).isCloseTo(end, within(1e-9));
            end = piece[0];
            // the weight is that of its depth, to within two thirds of a step
            double middle = (piece[0] + piece[2]) / 2;
            assertThat(one.share()).isCloseTo(1 - 0.7 * middle / 100, within(0.067));
        }
        assertThat(end).isZero();
    }

    @Test
    void aLineOnAnEdgeHasTheDepthOfTheNearerSide() {
        List<WeightedLines> lines = DepthWeight.of(
                SheetPaths.of("M 20 0 L 20 40"), point -> point.x() < 19.9 ? 10 : Double.POSITIVE_INFINITY, FADE);
        assertThat(lines).containsExactly(new WeightedLines(1, SheetPaths.of("M 20 0 L 20 40")));
    }

    @Test
    void linesBeforeTheBackgroundHaveTheLeastWeightAndUnknownOnesTheWhole() {
        List<VectorPath<SheetPoint>> line = SheetPaths.of("M 0 0 L 9 3");
        assertThat(DepthWeight.of(line, point -> Double.POSITIVE_INFINITY, FADE))
                .singleElement()
                .satisfies(one -> assertThat(one.share()).isCloseTo(0.3, within(1e-12)));
        assertThat(DepthWeight.of(line, point -> Double.NaN, FADE)).containsExactly(new WeightedLines(1, line));
    }

    @Test
    void whatALineOnlyTouchesDoesNotMakeItHeavier() {
        List<WeightedLines> lines =
                DepthWeight.of(SheetPaths.of("M 0 0 L 60 0"), point -> Math.abs(point.x() - 30) < 0.2 ? 10 : 30, FADE);
        assertThat(lines).hasSize(1);
    }

    @Test
    void aClosedRunOfOneWeightStaysClosedAndOneThatIsSplitGoesAllRound() {
        List<VectorPath<SheetPoint>> ring = SheetPaths.of("M 0 0 L 40 0 L 40 30 L 0 30 Z");
        assertThat(DepthWeight.of(ring, point -> 10, FADE).get(0).paths()).isEqualTo(ring);
        List<WeightedLines> split = DepthWeight.of(ring, point -> point.x() < 20 ? 10 : 30, FADE);
        assertThat(split).hasSize(2);
        assertThat(length(split)).isCloseTo(140, within(1e-9));
    }

    @Test
    void aCurveIsSplitWithoutLeavingItsCourse() {
        // x = 30 t, as its control points lie evenly
        List<WeightedLines> split =
                DepthWeight.of(SheetPaths.of("M 0 0 C 10 20 20 -20 30 0"), point -> point.x() < 15 ? 10 : 30, FADE);
        assertThat(split).hasSize(2);
        String near = split.get(1).paths().get(0).toString();
        assertThat(near).startsWith("M 0.0 0.0 C ").doesNotContain("L");
        assertThat(length(split))
                .isCloseTo(SheetPaths.path("M 0 0 C 10 20 20 -20 30 0").length(), within(1e-4));
        double[] end = java.util.Arrays.stream(near.split(" "))
                .skip(8)
                .mapToDouble(Double::parseDouble)
                .toArray();
        double t = end[0] / 30;
        assertThat(t).isCloseTo(0.5, within(0.03));
        assertThat(end[1]).isCloseTo(60 * (t * (1 - t) * (1 - t) - t * t * (1 - t)), within(1e-9));
    }

    @Property(tries = 60, seed = "1")
    void nothingIsLostOrMoved(@ForAll long seed) {
        Random random = new Random(seed);
        List<VectorPath<SheetPoint>> paths = new ArrayList<>();
        double before = 0;
        for (int n = 0; n < 20; n++) {
            paths.add(SheetPaths.line(
                    100 * random.nextDouble(),
                    80 * random.nextDouble(),
                    100 * random.nextDouble(),
                    80 * random.nextDouble()));
            before += paths.get(n).length();
        }
        DepthField hills = point -> 20 + 12 * Math.sin(point.x() / 7) * Math.cos(point.y() / 5);
        List<WeightedLines> split = DepthWeight.of(paths, hills, FADE);
        assertThat(length(split)).isCloseTo(before, within(1e-6));
        assertThat(split.stream().mapToDouble(WeightedLines::share)).isSorted();
    }

    private static double length(List<WeightedLines> lines) {
        return lines.stream()
                .flatMap(one -> one.paths().stream())
                .mapToDouble(VectorPath::length)
                .sum();
    }

    @Test
    void aFadeThatMakesNoSenseIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Fade(10, 10, 0.5, 0.3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Fade(10, 20, 0, 0.3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Fade(10, 20, 1.1, 0.3));
    }
}
