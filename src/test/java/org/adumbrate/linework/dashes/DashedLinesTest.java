package org.adumbrate.linework.dashes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.SheetPaths;
import org.adumbrate.linework.Stroke;
import org.junit.jupiter.api.Test;

class DashedLinesTest {
    @Test
    void dashesInARowAreOneDashedLine() {
        DashedLines lines = DashedLines.of(row(10, 20, 0, 3, 1.5, 10));
        assertThat(lines.strokes()).hasSize(1);
        assertThat(lines.dashes()).isEqualTo(10);
        assertThat(lines.lines()).isEqualTo(1);
        assertThat(lines.strokes().get(0).path()).hasToString("M 10.0 20.0 L 53.5 20.0");
        assertPattern(lines.strokes().get(0).dash(), 0, 3, 1.5);
    }

    @Test
    void whatIsMissingOfTheFirstDashIsThePhase() {
        List<Stroke> dashes = row(10, 20, 0, 3, 1.5, 8);
        dashes.set(0, stroke("M 12 20 L 13 20"));
        dashes.set(7, stroke("M 41.5 20 L 41.9 20"));
        DashedLines lines = DashedLines.of(dashes);
        assertThat(lines.strokes()).hasSize(1);
        assertThat(lines.strokes().get(0).path()).hasToString("M 12.0 20.0 L 41.9 20.0");
        assertPattern(lines.strokes().get(0).dash(), 2, 3, 1.5);
    }

    @Test
    void dashesAndDotsAreOnePattern() {
        List<Stroke> strokes = new ArrayList<>();
        for (int k = 0; k < 6; k++) {
            strokes.add(stroke("M " + (10 + 8 * k) + " 10 L " + (15 + 8 * k) + " 10"));
            strokes.add(stroke("M " + (16.25 + 8 * k) + " 10 L " + (16.75 + 8 * k) + " 10"));
        }
        DashedLines lines = DashedLines.of(strokes);
        assertThat(lines.strokes()).hasSize(1);
        assertPattern(lines.strokes().get(0).dash(), 0, 5, 1.25, 0.5, 1.25);
    }

    @Test
    void orderAndDirectionOfDashesDoNotMatter() {
        List<Stroke> dashes = row(10, 20, 0.3, 2, 1, 12);
        for (int k = 0; k < dashes.size(); k += 2) {
            VectorPath.Builder<PagePoint> back = VectorPath.in(Space.PAGE);
            dashes.get(k).path().pieces(piece -> {
                back.moveTo(piece.x3(), piece.y3());
                back.lineTo(piece.x0(), piece.y0());
            });
            dashes.set(k, dashes.get(k).along(back.build()));
        }
        java.util.Collections.shuffle(dashes, new Random(3));
        DashedLines lines = DashedLines.of(dashes);
        assertThat(lines.strokes()).hasSize(1);
        assertThat(lines.strokes().get(0).path().length()).isCloseTo(35, within(2e-3));
    }

    @Test
    void dashesFollowACircle() {
        List<Stroke> strokes = new ArrayList<>();
        for (int k = 0; k < 40; k++) {
            double from = k * Math.PI / 20;
            double to = from + Math.PI / 32;
            double h = 4.0 / 3 * Math.tan((to - from) / 4) * 15;
            strokes.add(stroke(String.format(
                    Locale.ROOT,
                    "M %.6f %.6f C %.6f %.6f %.6f %.6f %.6f %.6f",
                    50 + 15 * Math.cos(from),
                    50 + 15 * Math.sin(from),
                    50 + 15 * Math.cos(from) - h * Math.sin(from),
                    50 + 15 * Math.sin(from) + h * Math.cos(from),
                    50 + 15 * Math.cos(to) + h * Math.sin(to),
                    50 + 15 * Math.sin(to) - h * Math.cos(to),
                    50 + 15 * Math.cos(to),
                    50 + 15 * Math.sin(to))));
        }
        DashedLines lines = DashedLines.of(strokes);
        assertThat(lines.strokes()).hasSize(1);
        double missing = 15 * (Math.PI / 20 - Math.PI / 32);
        assertThat(lines.strokes().get(0).path().length()).isCloseTo(2 * Math.PI * 15 - missing, within(0.01));
    }

    @Test
    void runsOfOneStrokeAreDashesToo() {
        StringBuilder runs = new StringBuilder("M 100 100 L 120 110 L 130 90");
        for (int k = 0; k < 9; k++) {
            runs.append(" M ")
                    .append(10 + 2 * k)
                    .append(" 10 L ")
                    .append(11 + 2 * k)
                    .append(" 10");
        }
        DashedLines lines = DashedLines.of(List.of(stroke(runs.toString())));
        assertThat(lines.strokes())
                .extracting(stroke -> stroke.path().toString())
                .containsExactly("M 10.0 10.0 L 27.0 10.0", "M 100.0 100.0 L 120.0 110.0 L 130.0 90.0");
    }

    @Test
    void shortLinesTakeTheRhythmOfLongOnesOfTheirLook() {
        List<Stroke> strokes = row(10, 10, 0, 1, 0.5, 30);
        strokes.addAll(row(10, 20, 0, 1, 0.5, 2));
        strokes.addAll(row(10, 30, 0, 1, 0.8, 2));
        DashedLines lines = DashedLines.of(strokes);
        assertThat(lines.lines()).isEqualTo(2);
        assertThat(lines.strokes()).hasSize(4);
        assertThat(DashedLines.of(row(10, 20, 0, 1, 0.5, 4)).lines()).isZero();
    }

    @Test
    void whatLiesInTheGapOfAShortLineDoesNotEndIt() {
        List<Stroke> strokes = row(10, 10, 0, 1, 0.5, 30);
        strokes.addAll(row(10, 20, 0, 1, 0.5, 3));
        strokes.add(stroke("M 11.15 20.005 L 11.3 20.005"));
        DashedLines lines = DashedLines.of(strokes);
        assertThat(lines.strokes())
                .extracting(stroke -> stroke.path().toString())
                .containsExactly("M 10.0 10.0 L 54.5 10.0", "M 10.0 20.0 L 14.0 20.0", "M 11.15 20.005 L 11.3 20.005");
    }

    @Test
    void barsBetweenPostsAreNoDashes() {
        List<Stroke> strokes = row(10, 10, 0, 2, 0.3, 20);
        for (int k = 0; k < 20; k++) {
            strokes.add(stroke("M " + (10 + 2.3 * k) + " 5 L " + (10 + 2.3 * k) + " 15"));
            strokes.add(stroke("M " + (12 + 2.3 * k) + " 5 L " + (12 + 2.3 * k) + " 15"));
        }
        DashedLines lines = DashedLines.of(strokes);
        assertThat(lines.lines()).isZero();
        assertThat(lines.strokes()).isEqualTo(strokes);
    }

    @Test
    void headJointsOfBricksAreNoDashes() {
        List<Stroke> strokes = new ArrayList<>();
        for (int course = 0; course < 20; course++) {
            strokes.add(stroke("M 10 " + (10 + 0.75 * course) + " L 60 " + (10 + 0.75 * course)));
            for (int brick = 0; brick < 20; brick++) {
                double x = 10 + 2.5 * brick + (course % 2 == 0 ? 0 : 1.25);
                strokes.add(stroke("M " + x + " " + (10 + 0.75 * course) + " L " + x + " " + (10.75 + 0.75 * course)));
            }
        }
        assertThat(DashedLines.of(strokes).lines()).isZero();
    }

    @Test
    void piecesOfOneCurveInTurnsAreNoDashes() {
        List<Stroke> strokes = row(10, 10, 0, 1, 1, 10);
        strokes.addAll(row(11, 10, 0, 1, 1, 10));
        assertThat(DashedLines.of(strokes).lines()).isZero();
    }

    @Test
    void noRhythmNoDashes() {
        Random random = new Random(4);
        List<Stroke> strokes = new ArrayList<>();
        double x = 10;
        for (int k = 0; k < 30; k++) {
            double to = x + 0.5 + 2 * random.nextDouble();
            strokes.add(stroke("M " + x + " 10 L " + to + " 10"));
            x = to + 0.3 + random.nextDouble();
        }
        assertThat(DashedLines.of(strokes).lines()).isZero();
    }

    @Test
    void twoLinesOnTopOfEachOtherAreTwoDashedLines() {
        List<Stroke> strokes = row(10, 10, 0, 1, 0.5, 20);
        strokes.addAll(row(10, 10, 0, 1, 0.5, 20));
        DashedLines lines = DashedLines.of(strokes);
        assertThat(lines.strokes()).hasSize(2);
    }

    /** Lines of any direction, cut into dashes and rounded as files do, come back whole. */
    @Property(tries = 100, seed = "8")
    void dashedLinesComeBack(@ForAll long seed) {
        Random random = new Random(seed);
        List<Stroke> strokes = new ArrayList<>();
        double dash = 0.6 + 3 * random.nextDouble();
        double gap = 0.4 + random.nextDouble();
        for (int k = 0; k < 6; k++) {
            strokes.addAll(row(
                    20 + 100 * random.nextDouble(),
                    20 + 30 * k + random.nextDouble(),
                    0.2 * random.nextDouble(),
                    dash,
                    gap,
                    5 + random.nextInt(20)));
        }
        DashedLines lines = DashedLines.of(strokes);
        assertThat(lines.strokes()).hasSize(6);
        assertThat(lines.dashes()).isEqualTo(strokes.size());
    }

    private static void assertPattern(Dash dash, double phase, double... lengths) {
        assertThat(dash.phaseMm()).isCloseTo(phase, within(0.01));
        assertThat(dash.lengthsMm().stream().mapToDouble(Double::doubleValue).toArray())
                .containsExactly(Arrays.copyOf(lengths, lengths.length), within(0.01));
    }

    /** Dashes from a point on in a direction, rounded to a thousandth of a mm. */
    private static List<Stroke> row(double x, double y, double angle, double dash, double gap, int count) {
        List<Stroke> dashes = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            double from = k * (dash + gap);
            double to = from + dash;
            dashes.add(stroke(String.format(
                    Locale.ROOT,
                    "M %.3f %.3f L %.3f %.3f",
                    x + from * Math.cos(angle),
                    y + from * Math.sin(angle),
                    x + to * Math.cos(angle),
                    y + to * Math.sin(angle))));
        }
        return dashes;
    }

    private static Stroke stroke(String path) {
        return new Stroke(
                SheetPaths.path(Space.PAGE, path),
                Srgb.BLACK,
                0.25,
                Dash.NONE,
                LineCap.BUTT,
                LineJoin.MITER,
                /* layer= */ Optional.empty());
    }
}
