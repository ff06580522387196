package org.adumbrate.linework.clip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.SheetPaths;
import org.junit.jupiter.api.Test;

class ClipTest {
    private static final Clip<PagePoint> WINDOW = Clip.rectangle(10, 10, 30, 20);

    @Test
    void whatIsWhollyInsideStaysTheVerySamePath() {
        VectorPath<PagePoint> path = path("M 12 12 L 28 18 Z");
        assertThat(WINDOW.visible(path)).isSameAs(path);
    }

    @Test
    void whatIsOutsideIsGone() {
        assertThat(WINDOW.visible(path("M 12 25 L 28 40")).isEmpty()).isTrue();
        // its box meets the window, but it passes the corner
        assertThat(WINDOW.visible(path("M 5 15 L 15 5")).isEmpty()).isTrue();
    }

    @Test
    void aLineIsCutAtTheBorder() {
        assertThat(WINDOW.visible(path("M 0 15 L 100 15"))).isEqualTo(path("M 10 15 L 30 15"));
    }

    @Test
    void aLineAlongTheBorderIsVisible() {
        assertThat(WINDOW.visible(path("M 0 10 L 100 10"))).isEqualTo(path("M 10 10 L 30 10"));
        VectorPath<PagePoint> aHairOutside = path("M 10.00001 20.0001 L 30 20.0001");
        assertThat(WINDOW.visible(aHairOutside)).isSameAs(aHairOutside);
    }

    @Test
    void aPathCutInPiecesStaysOnePathWithSeveralRuns() {
        VectorPath<PagePoint> zigzag = path("M 12 15 L 12 25 L 20 25 L 20 15 L 20 5 L 28 5 L 28 12");
        assertThat(WINDOW.visible(zigzag)).isEqualTo(path("M 12 15 L 12 20 M 20 20 L 20 15 L 20 10 M 28 10 L 28 12"));
    }

    @Test
    void aClosedPathIsPutTogetherWhereItBegan() {
        VectorPath<PagePoint> box = path("M 20 15 L 20 18 L 40 18 L 40 12 L 20 12 Z");
        assertThat(WINDOW.visible(box)).isEqualTo(path("M 30 12 L 20 12 L 20 15 L 20 18 L 30 18"));
        VectorPath<PagePoint> backAtStart = path("M 20 12 L 20 18 L 40 18 L 40 12 L 20 12 Z");
        assertThat(WINDOW.visible(backAtStart)).isEqualTo(path("M 30 12 L 20 12 L 20 18 L 30 18"));
    }

    @Test
    void aClosedRunThatIsNotCutStaysClosedBesideOneThatIs() {
        assertThat(WINDOW.visible(path("M 12 12 L 14 12 L 14 14 Z M 28 15 L 50 15")))
                .isEqualTo(path("M 12 12 L 14 12 L 14 14 Z M 28 15 L 30 15"));
    }

    @Test
    void aCurveIsSplitWithoutChangingItsCourse() {
        // x = 40t, y = 15 + 9·(t(1-t)² - t²(1-t)): the part from t = 1/4 to t = 3/4 is visible
        VectorPath<PagePoint> curve = path("M 0 15 C 13.333333333333334 18 26.666666666666668 12 40 15");
        VectorPath<PagePoint> part = WINDOW.visible(curve);
        double[] found = coordinates(part);
        double y = 15 + 9 * (0.25 * 0.75 * 0.75 - 0.25 * 0.25 * 0.75);
        // the slopes at the ends are those of the whole curve, times the half of t that is left
        double slope = 9 * (1 - 6 * 0.25 + 6 * 0.25 * 0.25);
        double[] expected = {10, y, 10 + 20 / 3.0, y + slope / 6, 30 - 20 / 3.0, 30 - y - slope / 6, 30, 30 - y};
        assertThat(found).containsExactly(expected, within(1e-9));
    }

    @Test
    void theEvenOddRuleLeavesAHoleThatTheOtherFills() {
        VectorPath<PagePoint> rings = path("M 0 0 L 40 0 L 40 40 L 0 40 Z M 10 10 L 30 10 L 30 30 L 10 30 Z");
        VectorPath<PagePoint> line = path("M -10 20 L 50 20");
        Clip<PagePoint> page = Clip.rectangle(-100, -100, 100, 100);
        assertThat(page.within(rings, FillRule.EVEN_ODD).visible(line))
                .isEqualTo(path("M 0 20 L 10 20 M 30 20 L 40 20"));
        assertThat(page.within(rings, FillRule.NON_ZERO).visible(line)).isEqualTo(path("M 0 20 L 40 20"));
    }

    @Test
    void severalShapesLetThroughWhatAnyOfThemDoes() {
        Clip<PagePoint> clip = Clip.<PagePoint>rectangle(0, 0, 100, 100)
                .withinAny(List.of(
                        new ClipShape<>(path("M 0 0 L 20 0 L 20 20 L 0 20 Z"), FillRule.NON_ZERO),
                        new ClipShape<>(path("M 30 0 L 50 0 L 40 20 Z"), FillRule.NON_ZERO)));
        assertThat(clip.visible(path("M 10 10 L 90 10"))).isEqualTo(path("M 10 10 L 20 10 M 35 10 L 45 10"));
        assertThat(clip.withinAny(List.of()).visible(path("M 10 10 L 90 10")).isEmpty())
                .isTrue();
    }

    @Test
    void aLineThroughTheCornersOfAnOutlineIsCutThere() {
        Clip<PagePoint> clip = Clip.<PagePoint>rectangle(0, 0, 100, 100)
                .within(path("M 50 20 L 80 50 L 50 80 L 20 50 Z"), FillRule.NON_ZERO);
        double[] across = coordinates(clip.visible(path("M 0 50 L 100 50")));
        assertThat(across).containsExactly(new double[] {20, 50, 80, 50}, within(1e-9));
        // along an edge, and past its ends
        double[] along = coordinates(clip.visible(path("M 10 60 L 60 10")));
        assertThat(along).containsExactly(new double[] {20, 50, 50, 20}, within(1e-3));
    }

    @Test
    void aRoundClipCutsToWithinMicrometres() {
        double k = 10 * 0.5522847498;
        VectorPath.Builder<PagePoint> circle = VectorPath.in(Space.PAGE);
        circle.moveTo(60, 50);
        circle.curveTo(60, 50 + k, 50 + k, 60, 50, 60);
        circle.curveTo(50 - k, 60, 40, 50 + k, 40, 50);
        circle.curveTo(40, 50 - k, 50 - k, 40, 50, 40);
        circle.curveTo(50 + k, 40, 60, 50 - k, 60, 50);
        Clip<PagePoint> clip = Clip.<PagePoint>rectangle(0, 0, 100, 100).within(circle.build(), FillRule.NON_ZERO);
        double[] chord = coordinates(clip.visible(path("M 0 56 L 100 56")));
        assertThat(chord).containsExactly(new double[] {42, 56, 58, 56}, within(0.006));
    }

    /** Against Java2D's own test of which points lie in a shape, at many points along the line. */
    @Property(tries = 50, seed = "1")
    void theVisibleLengthIsThatOfThePointsInside(@ForAll long seed) {
        Random random = new Random(seed);
        Path2D shape = new Path2D.Double(random.nextBoolean() ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
        VectorPath.Builder<PagePoint> outline = VectorPath.in(Space.PAGE);
        for (int k = 0; k < 3 + random.nextInt(6); k++) {
            double x = random.nextDouble() * 100;
            double y = random.nextDouble() * 100;
            if (k == 0) {
                shape.moveTo(x, y);
                outline.moveTo(x, y);
            } else if (random.nextBoolean()) {
                shape.lineTo(x, y);
                outline.lineTo(x, y);
            } else {
                double cx = random.nextDouble() * 100;
                double cy = random.nextDouble() * 100;
                shape.curveTo(cx, cy, cy, cx, x, y);
                outline.curveTo(cx, cy, cy, cx, x, y);
            }
        }
        shape.closePath();
        FillRule rule = shape.getWindingRule() == Path2D.WIND_EVEN_ODD ? FillRule.EVEN_ODD : FillRule.NON_ZERO;
        Clip<PagePoint> clip = Clip.<PagePoint>rectangle(20, 20, 80, 80).within(outline.build(), rule);
        double x1 = random.nextDouble() * 100;
        double y1 = random.nextDouble() * 100;
        double x2 = random.nextDouble() * 100;
        double y2 = random.nextDouble() * 100;
        VectorPath<PagePoint> line = path("M " + x1 + " " + y1 + " L " + x2 + " " + y2);
        int samples = 10_000;
        int inside = 0;
        for (int k = 0; k < samples; k++) {
            double t = (k + 0.5) / samples;
            double x = x1 + t * (x2 - x1);
            double y = y1 + t * (y2 - y1);
            inside += shape.contains(x, y) && x >= 20 && x <= 80 && y >= 20 && y <= 80 ? 1 : 0;
        }
        double length = line.length();
        assertThat(clip.visible(line).length()).isCloseTo(length * inside / samples, within(0.02 + length / 1000));
    }

    private static double[] coordinates(VectorPath<?> path) {
        return Arrays.stream(path.toString().split("[A-Z ]+", -1))
                .filter(word -> !word.isEmpty())
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static VectorPath<PagePoint> path(String text) {
        return SheetPaths.path(Space.PAGE, text);
    }
}
