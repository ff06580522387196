package org.adumbrate.linework.profile;

import static org.adumbrate.linework.profile.ProfileSettings.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.SheetPaths;
import org.junit.jupiter.api.Test;

class ProfileLinesTest {
    /** A gable 20 mm wide, 15 mm high at the eaves and 22 mm at the ridge, with a window and its middle bar. */
    private static final List<VectorPath<SheetPoint>> HOUSE = SheetPaths.of(
            "M 10 40 L 10 25",
            "M 10 25 L 20 18 L 30 25",
            "M 30 40 L 30 25",
            "M 10 40 L 30 40",
            "M 10 25 L 30 25",
            "M 15 30 L 25 30 L 25 35 L 15 35 Z",
            "M 20 30 L 20 35");

    private static final List<VectorPath<SheetPoint>> NO_CUT = List.of();

    @Test
    void theOutlineIsTheOuterOneAlone() {
        assertThat(ProfileLines.of(HOUSE, NO_CUT, STANDARD))
                .singleElement()
                .satisfies(path -> assertThat(path.toString()).endsWith("Z"))
                .satisfies(path ->
                        assertThat(path.length()).isCloseTo(15 + 15 + 20 + 2 * Math.hypot(10, 7), within(1e-6)));
    }

    @Test
    void theOutlineFollowsALargeArc() {
        // a gasholder of 400 mm: half a circle on its diameter
        double k = 200 * 4 / 3.0 * (Math.sqrt(2) - 1);
        List<VectorPath<SheetPoint>> holder = SheetPaths.of("M 0 250 C 0 " + (250 - k) + " " + (200 - k)
                + " 50 200 50 C " + (200 + k) + " 50 400 " + (250 - k) + " 400 250 Z");
        List<SheetPoint> middles = new ArrayList<>();
        ProfileLines.of(holder, NO_CUT, STANDARD)
                .forEach(path ->
                        path.chords(1, (x0, y0, x1, y1) -> middles.add(new SheetPoint((x0 + x1) / 2, (y0 + y1) / 2))));
        assertThat(middles).filteredOn(middle -> middle.y() < 249).isNotEmpty().allSatisfy(middle -> assertThat(
                        Math.hypot(middle.x() - 200, middle.y() - 250))
                .isCloseTo(200, within(0.1)));
    }

    @Test
    void whereTheCutBoundsTheBuildingItsOwnPenIsHeavyEnough() {
        List<VectorPath<SheetPoint>> walls = SheetPaths.of("M 30 40 L 30 25", "M 10 25 L 20 18 L 30 25");
        List<VectorPath<SheetPoint>> cut = SheetPaths.of("M 30 40 L 10 40 L 10 25");
        assertThat(ProfileLines.of(walls, cut, STANDARD)).singleElement().satisfies(path -> assertThat(path.length())
                .isCloseTo(15 + 2 * Math.hypot(10, 7), within(1e-6)));
    }

    @Test
    void smallGapsAtCornersAreBridgedButNotDrawn() {
        List<VectorPath<SheetPoint>> gaping =
                SheetPaths.of("M 10 10 L 29.6 10", "M 30 10.3 L 30 20", "M 30 20 L 10.4 20", "M 10 19.8 L 10 10.2");
        List<VectorPath<SheetPoint>> profile = ProfileLines.of(gaping, NO_CUT, STANDARD);
        double drawn = gaping.stream().mapToDouble(VectorPath::length).sum();
        assertThat(profile.stream().mapToDouble(VectorPath::length).sum()).isCloseTo(drawn, within(1e-6));
        assertThat(ProfileLines.of(gaping, NO_CUT, new ProfileSettings(0.1, 0.8, 0.35, 1.1)))
                .isEmpty();
    }

    @Test
    void aLineThatSomethingInFrontInterruptsStillEncloses() {
        List<VectorPath<SheetPoint>> behindATree =
                SheetPaths.of("M 10 10 L 16 10", "M 24 10 L 30 10 L 30 20 L 10 20 L 10 10");
        List<VectorPath<SheetPoint>> profile = ProfileLines.of(behindATree, NO_CUT, STANDARD);
        assertThat(profile.stream().mapToDouble(VectorPath::length).sum()).isCloseTo(60 - 8, within(1e-6));
    }

    @Test
    void whatIsThinKeepsItsOwnPen() {
        List<VectorPath<SheetPoint>> withRail = new ArrayList<>(HOUSE);
        withRail.addAll(SheetPaths.of("M 30 30 L 50 30 L 50 30.4 L 30 30.4"));
        double length = ProfileLines.of(withRail, NO_CUT, STANDARD).stream()
                .mapToDouble(VectorPath::length)
                .sum();
        assertThat(length).isCloseTo(50 + 2 * Math.hypot(10, 7), within(1.5));
    }

    @Test
    void linesThatEncloseNothingHaveNoOutline() {
        assertThat(ProfileLines.of(SheetPaths.of("M 0 0 L 9 9", "M 0 9 L 9 0"), NO_CUT, STANDARD))
                .isEmpty();
        assertThat(ProfileLines.of(List.of(), NO_CUT, STANDARD)).isEmpty();
    }

    /** The house 20 m away before the sky, on ground that reaches from 20 m at its foot into the distance. */
    private static double depth(SheetPoint point) {
        boolean house = point.x() > 10
                && point.x() < 30
                && point.y() < 40
                && point.y() > 25 - 7 * (1 - Math.abs(point.x() - 20) / 10);
        if (house) {
            return 20;
        }
        // the horizon lies at y = 20: depth falls as 1 / (y - 20)
        return point.y() > 20.5 ? 20 * 20 / (point.y() - 20) : Double.POSITIVE_INFINITY;
    }

    @Test
    void withDepthTheFootOnTheGroundIsNoOutline() {
        List<VectorPath<SheetPoint>> profile = ProfileLines.of(HOUSE, NO_CUT, ProfileLinesTest::depth, STANDARD);
        assertThat(SheetPaths.segments(profile))
                .noneMatch(line -> line[1] > 39.9 && line[3] > 39.9)
                .anyMatch(line -> (line[0] == 20 && line[1] == 18) || (line[2] == 20 && line[3] == 18));
    }

    /** From y = 38.5 on the ground is less than 1.08 times as far away. */
    @Test
    void withDepthTheOutlineOfAWallGoesOnToItsFoot() {
        List<VectorPath<SheetPoint>> profile = ProfileLines.of(HOUSE, NO_CUT, ProfileLinesTest::depth, STANDARD);
        for (double wall : new double[] {10, 30}) {
            assertThat(SheetPaths.segments(profile))
                    .anyMatch(line -> line[0] == wall && line[2] == wall && Math.max(line[1], line[3]) > 39.99);
        }
    }

    /** The ground falls back by 0.4 m for each mm, so it is 1.08 times as far away 4 mm above the foot. */
    @Test
    void withDepthTheOutlineEndsWhereMuchOfAWallHardlyStandsBeforeTheGround() {
        DepthField low = point -> point.y() > 30.5 && depth(point) != 20 ? 20 + (40 - point.y()) * 0.4 : depth(point);
        assertThat(SheetPaths.segments(ProfileLines.of(HOUSE, NO_CUT, low, STANDARD)))
                .isNotEmpty()
                .noneMatch(line -> Math.max(line[1], line[3]) > 36.5);
    }

    @Test
    void withDepthAWallWhoseFootIsHiddenHasAnOutlineToo() {
        List<VectorPath<SheetPoint>> open = SheetPaths.of("M 10 36 L 10 25 L 20 18 L 30 25 L 30 36");
        assertThat(ProfileLines.of(open, NO_CUT, STANDARD)).isEmpty();
        double length = ProfileLines.of(open, NO_CUT, ProfileLinesTest::depth, STANDARD).stream()
                .mapToDouble(VectorPath::length)
                .sum();
        // at the walls the ground behind is less than 1.32 times as far away from y = 35.2 on
        assertThat(length).isCloseTo(2 * 10.2 + 2 * Math.hypot(10, 7), within(1.0));
    }

    @Test
    void whereDepthShowsSomethingElseBeforeTheLineOrNothingLinesDecide() {
        List<VectorPath<SheetPoint>> byLines = ProfileLines.of(HOUSE, NO_CUT, STANDARD);
        assertThat(ProfileLines.of(HOUSE, NO_CUT, point -> 12 + 0.01 * point.x(), STANDARD))
                .isEqualTo(byLines);
        assertThat(ProfileLines.of(HOUSE, NO_CUT, point -> Double.NaN, STANDARD))
                .isEqualTo(byLines);
    }

    @Property(tries = 40, seed = "1")
    void theOutlineOfManyBoxesRunsAlongTheirLinesAndEnclosesThemAll(@ForAll long seed) {
        Random random = new Random(seed);
        List<VectorPath<SheetPoint>> boxes = new ArrayList<>();
        for (int n = 0; n < 12; n++) {
            double x = 10 + 60 * random.nextDouble();
            double y = 10 + 40 * random.nextDouble();
            double w = 5 + 15 * random.nextDouble();
            double h = 5 + 15 * random.nextDouble();
            boxes.add(SheetPaths.line(x, y, x + w, y));
            boxes.add(SheetPaths.line(x + w, y, x + w, y + h));
            boxes.add(SheetPaths.line(x + w, y + h, x, y + h));
            boxes.add(SheetPaths.line(x, y + h, x, y));
        }
        Collections.shuffle(boxes, random);
        List<double[]> lines = SheetPaths.segments(boxes);
        List<double[]> profile = SheetPaths.segments(ProfileLines.of(boxes, NO_CUT, STANDARD));
        assertThat(profile).isNotEmpty().allSatisfy(piece -> {
            double x = (piece[0] + piece[2]) / 2;
            double y = (piece[1] + piece[3]) / 2;
            assertThat(lines).anyMatch(line -> distance(x, y, line) < 0.02);
        });
        double left = lines.stream().mapToDouble(line -> line[0]).min().orElseThrow();
        double outermost = profile.stream()
                .mapToDouble(piece -> Math.min(piece[0], piece[2]))
                .min()
                .orElseThrow();
        assertThat(outermost).isCloseTo(left, within(0.02));
    }

    private static double distance(double x, double y, double[] line) {
        double dx = line[2] - line[0];
        double dy = line[3] - line[1];
        double t = Math.max(0, Math.min(1, ((x - line[0]) * dx + (y - line[1]) * dy) / (dx * dx + dy * dy)));
        return Math.hypot(x - line[0] - t * dx, y - line[1] - t * dy);
    }

    @Test
    void settingsThatMakeNoSenseAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ProfileSettings(0, 1, 1, 1.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new ProfileSettings(0.6, 0.8, 0.35, 1));
    }
}
