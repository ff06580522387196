package org.adumbrate.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Curves as chords: never farther off than asked for, and hardly more of them than that needs. */
class FlattenerTest {
    private static final int SAMPLES = 2000;

    @Property(seed = "1", tries = 300)
    void noPointOfACurveLiesFartherFromItsChordThanTheTolerance(
            @ForAll @Size(8) List<@DoubleRange(min = -100, max = 100) Double> points,
            @ForAll @DoubleRange(min = 0.01, max = 2) double tolerance) {
        PathPiece curve = curve(points);
        List<double[]> chords = chords(curve, tolerance);
        for (int k = 0; k <= SAMPLES; k++) {
            double t = (double) k / SAMPLES;
            double[] over = chords.get((int) Math.min(chords.size() - 1, Math.floor(t * chords.size())));
            assertThat(distance(curve.xAt(t), curve.yAt(t), over)).isLessThanOrEqualTo(tolerance * (1 + 1e-9));
        }
    }

    /** Arcs of circles, also seen at a slant, are what drawings have most. */
    @Property(seed = "2", tries = 100)
    void anArcTakesHardlyMoreChordsThanItNeeds(
            @ForAll @DoubleRange(min = 1, max = 500) double radius,
            @ForAll @DoubleRange(min = 0.1, max = 1.6) double angle,
            @ForAll @DoubleRange(min = 0.2, max = 1) double flatness,
            @ForAll boolean upright) {
        PathPiece arc = arc(radius, angle, upright ? 1 : flatness);
        double factor = upright ? 1.1 : 2;
        assertThat(chords(arc, 0.01)).hasSizeLessThanOrEqualTo((int) (factor * least(arc, 0.01)) + 1);
    }

    /** Equal steps are lost on curves that go fast where they are straight; on the whole they cost little. */
    @Test
    void curvesOfAnyShapeTakeLittleMoreThanTwiceTheChordsThatTheyNeed() {
        Random random = new Random(3);
        int taken = 0;
        int needed = 0;
        for (int n = 0; n < 300; n++) {
            PathPiece curve = curve(random.doubles(8, 0, 100).boxed().toList());
            taken += chords(curve, 0.05).size();
            needed += least(curve, 0.05);
        }
        assertThat(taken).isLessThan(5 * needed / 2);
    }

    @Test
    void aStraightLineDrawnAsACurveIsOneChordHoweverUnevenlyItRuns() {
        assertThat(chords(PathPiece.curve(0, 0, 0, 0, 300, 400, 300, 400), 0.01))
                .hasSize(1);
        assertThat(chords(PathPiece.curve(0, 0, 3, 4, 6, 8, 300, 400), 0.01)).hasSize(1);
    }

    @Test
    void aCurveThatTurnsBackOnItselfIsFollowedAllTheWay() {
        double farthest = chords(PathPiece.curve(0, 0, 60, 0, 60, 0, 10, 0), 0.01).stream()
                .mapToDouble(chord -> chord[2])
                .max()
                .orElseThrow();
        assertThat(farthest).isBetween(46.3, 46.4);
    }

    @Test
    void chordsFollowOneAnotherFromEndToEnd() {
        List<double[]> chords = chords(arc(50, 1.5, 1), 0.01);
        assertThat(chords.get(0)).startsWith(50, 0);
        for (int k = 1; k < chords.size(); k++) {
            assertThat(Arrays.copyOf(chords.get(k), 2)).isEqualTo(Arrays.copyOfRange(chords.get(k - 1), 2, 4));
        }
        PathPiece arc = arc(50, 1.5, 1);
        assertThat(Arrays.copyOfRange(chords.get(chords.size() - 1), 2, 4)).containsExactly(arc.x3(), arc.y3());
    }

    @Test
    void aPathGivesItsLinesAsTheyAreClosingStepsToo() {
        List<String> lines = new ArrayList<>();
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(9, 9);
        path.moveTo(0, 0);
        path.lineTo(4, 0);
        path.lineTo(4, 3);
        path.close();
        path.lineTo(0, 1);
        path.build().chords(0.01, (x0, y0, x1, y1) -> lines.add("%.0f %.0f %.0f %.0f".formatted(x0, y0, x1, y1)));
        assertThat(lines).containsExactly("0 0 4 0", "4 0 4 3", "4 3 0 0", "0 0 0 1");
    }

    /** An arc of an ellipse, its control points as usual at 4/3 tan(angle/4) of the radius along its ends' tangents. */
    private static PathPiece arc(double radius, double angle, double flatness) {
        double k = 4 / 3.0 * Math.tan(angle / 4);
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return PathPiece.curve(
                radius,
                0,
                radius,
                flatness * radius * k,
                radius * (cos + k * sin),
                flatness * radius * (sin - k * cos),
                radius * cos,
                flatness * radius * sin);
    }

    private static PathPiece curve(List<Double> p) {
        return PathPiece.curve(p.get(0), p.get(1), p.get(2), p.get(3), p.get(4), p.get(5), p.get(6), p.get(7));
    }

    static List<double[]> chords(PathPiece curve, double tolerance) {
        List<double[]> chords = new ArrayList<>();
        curve.chords(tolerance, (x0, y0, x1, y1) -> chords.add(new double[] {x0, y0, x1, y1}));
        return chords;
    }

    /** How many chords from place to place of the curve suffice, each reaching as far as it may. */
    private static int least(PathPiece curve, double tolerance) {
        int count = 0;
        for (int from = 0; from < SAMPLES; count++) {
            int low = from + 1;
            int high = SAMPLES;
            while (low < high) {
                int middle = (low + high + 1) / 2;
                if (suffices(curve, from, middle, tolerance)) {
                    low = middle;
                } else {
                    high = middle - 1;
                }
            }
            from = low;
        }
        return count;
    }

    private static boolean suffices(PathPiece curve, int from, int to, double tolerance) {
        double[] chord = {at(curve, from)[0], at(curve, from)[1], at(curve, to)[0], at(curve, to)[1]};
        for (int k = from + 1; k < to; k++) {
            if (distance(at(curve, k)[0], at(curve, k)[1], chord) > tolerance) {
                return false;
            }
        }
        return true;
    }

    private static double[] at(PathPiece curve, int sample) {
        double t = (double) sample / SAMPLES;
        return new double[] {curve.xAt(t), curve.yAt(t)};
    }

    private static double distance(double x, double y, double[] chord) {
        double dx = chord[2] - chord[0];
        double dy = chord[3] - chord[1];
        double square = dx * dx + dy * dy;
        double along = square == 0 ? 0 : ((x - chord[0]) * dx + (y - chord[1]) * dy) / square;
        double t = Math.max(0, Math.min(1, along));
        return Math.hypot(x - chord[0] - t * dx, y - chord[1] - t * dy);
    }
}
