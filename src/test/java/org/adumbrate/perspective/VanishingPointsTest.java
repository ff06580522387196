package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The classical construction against worked examples, each by projection of the shadow's tip in space: focal length 1000,
 * principal point (800, 600), eye at 1.6; the fourth with a camera that is pitched 12 degrees down (focal length 1200,
 * principal point (960, 540), eye at 6).
 */
class VanishingPointsTest {
    private static final View VIEW = new View(1000, new SheetPoint(800, 600), 1.6, 0);

    @ParameterizedTest
    @CsvSource({
        "-90, 40, 675, 800, 675, 425, 1121.907597, 800",
        "150, 35, 1050, 866.666667, 1050, 450, 768.633520, 775.978280",
        "25, 20, 900, 760, 900, 580, 602.453274, 889.965823",
        "-20, 30, 633.333333, 733.333333, 633.333333, 400, 867.324361, 891.459231"
    })
    void castsTheWorkedExamples(
            double azimuth, double altitude, double fx, double fy, double hx, double hy, double tx, double ty) {
        VanishingPoints points = VanishingPoints.of(VIEW, SunDirection.of(azimuth, altitude, 0));
        near(points.shadowTip(new SheetPoint(fx, fy), new SheetPoint(hx, hy)), tx, ty, 1e-5);
    }

    /** The sun straight ahead: foot, head and both vanishing points lie on one line of the picture. */
    @Test
    void aTipBehindTheViewerIsNotSeen() {
        VanishingPoints points = VanishingPoints.of(VIEW, SunDirection.of(0, 20, 0));
        assertThat(points.shadowTip(new SheetPoint(800, 1000), new SheetPoint(800, 250)))
                .isEmpty();
    }

    @Test
    void aTipStraightBetweenViewerAndSunIsSeen() {
        VanishingPoints points = VanishingPoints.of(VIEW, SunDirection.of(0, 60, 0));
        SheetPoint tip = VIEW.project(new ModelPoint(0, 4 - 3 / Math.tan(Math.toRadians(60)), 0))
                .orElseThrow();
        near(points.shadowTip(new SheetPoint(800, 1000), new SheetPoint(800, 250)), tip.x(), tip.y(), 1e-9);
    }

    /** Both points of the pitched example as published beside it, brought to one scale by cos 50 degrees. */
    @Test
    void castsTheExampleOfAPitchedCamera() {
        double scale = Math.cos(Math.toRadians(50));
        Homogeneous shadow = new Homogeneous(1490.677484 * scale, 213.500934 * scale, 0.749305 * scale);
        VanishingPoints points = new VanishingPoints(shadow, new Homogeneous(1111.087829, 1122.406777, 0.640913));
        near(
                points.shadowTip(new SheetPoint(799.37395, 777.575721), new SheetPoint(792.3765, 541.984589)),
                932.765612,
                722.355305,
                2e-3);
    }

    @ParameterizedTest
    @CsvSource({
        "150, 35, 222.649731, 600, 222.649731, 1408.530021",
        "25, 20, 1266.307658, 600, 1266.307658, 198.403280",
        "-20, 30, 436.029766, 600, 436.029766, -14.403323"
    })
    void thePointsThemselvesLieWhereTheExamplesSay(
            double azimuth, double altitude, double sx, double sy, double rx, double ry) {
        VanishingPoints points = VanishingPoints.of(VIEW, SunDirection.of(azimuth, altitude, 0));
        assertThat(points.shadow().x() / points.shadow().w()).isCloseTo(sx, within(1e-6));
        assertThat(points.shadow().y() / points.shadow().w()).isCloseTo(sy, within(1e-6));
        assertThat(points.ray().x() / points.ray().w()).isCloseTo(rx, within(1e-6));
        assertThat(points.ray().y() / points.ray().w()).isCloseTo(ry, within(1e-6));
    }

    @Test
    void aSunBesideTheViewerSendsBothPointsToInfinity() {
        VanishingPoints points = VanishingPoints.of(VIEW, new SunDirection(-Math.cos(0.7), 0, Math.sin(0.7)));
        assertThat(points.shadow().w()).isZero();
        assertThat(points.ray().w()).isZero();
        assertThat(points.shadow().seen()).isEmpty();
        assertThat(points.ray().y() / points.ray().x()).isCloseTo(Math.tan(0.7), within(1e-12));
    }

    @Test
    void aSunOverheadCastsAShadowOnTheFoot() {
        VanishingPoints points = VanishingPoints.of(VIEW, new SunDirection(0, 0, 1));
        assertThat(points.shadowTip(new SheetPoint(675, 800), new SheetPoint(675, 425)))
                .contains(new SheetPoint(675, 800));
    }

    @Test
    void aSunThatIsDownIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> VanishingPoints.of(VIEW, SunDirection.of(10, -1, 0)));
    }

    /** Construction in the picture and projection from space agree for any sun, any upright, any floor and any turn. */
    @Property(seed = "1")
    void constructionIsProjection(
            @ForAll @DoubleRange(min = -180, max = 180) double azimuth,
            @ForAll @DoubleRange(min = 3, max = 90) double altitude,
            @ForAll @DoubleRange(min = -10, max = 10) double x,
            @ForAll @DoubleRange(min = 2, max = 60) double y,
            @ForAll @DoubleRange(min = -4, max = 8) double floor,
            @ForAll @DoubleRange(min = 0.3, max = 9) double height,
            @ForAll @DoubleRange(min = -3, max = 3) double turn) {
        View view = new View(260, new SheetPoint(214, 150.5), 4.25, turn);
        // feet are scattered before the viewer, whatever the turn
        ModelPoint foot =
                new ModelPoint(x * Math.cos(turn) + y * Math.sin(turn), y * Math.cos(turn) - x * Math.sin(turn), floor);
        SunDirection sun = SunDirection.of(azimuth, altitude, 0);
        double t = height / sun.z();
        Optional<SheetPoint> projected =
                view.project(new ModelPoint(foot.x() - t * sun.x(), foot.y() - t * sun.y(), floor));
        Optional<SheetPoint> constructed = VanishingPoints.of(view, sun)
                .shadowTip(
                        view.project(foot).orElseThrow(),
                        view.project(new ModelPoint(foot.x(), foot.y(), floor + height))
                                .orElseThrow());
        double depth = view.depth(new ModelPoint(foot.x() - t * sun.x(), foot.y() - t * sun.y(), floor));
        if (Math.abs(depth) < 1e-6) {
            return;
        }
        assertThat(constructed.isPresent()).isEqualTo(projected.isPresent());
        projected.ifPresent(tip -> {
            double error = tip.distanceTo(constructed.orElseThrow());
            assertThat(error).isLessThan(1e-9 * (1 + Math.hypot(tip.x(), tip.y())) / Math.min(1, depth));
        });
    }

    /** Away from the sun's own plane through the eye it is the textbook's meeting of two lines. */
    @Property(seed = "1")
    void constructionIsTheMeetingOfTwoLines(
            @ForAll @DoubleRange(min = -180, max = 180) double azimuth,
            @ForAll @DoubleRange(min = 5, max = 85) double altitude,
            @ForAll @DoubleRange(min = 0, max = 430) double x,
            @ForAll @DoubleRange(min = 160, max = 270) double y,
            @ForAll @DoubleRange(min = 2, max = 60) double height) {
        View view = new View(260, new SheetPoint(214, 150.5), 4.25, 0);
        VanishingPoints points = VanishingPoints.of(view, SunDirection.of(azimuth, altitude, 0));
        SheetPoint foot = new SheetPoint(x, y);
        SheetPoint head = new SheetPoint(x, y - height);
        Homogeneous meet =
                cross(cross(Homogeneous.of(foot), points.shadow()), cross(Homogeneous.of(head), points.ray()));
        double beside = Math.abs(points.shadow().x() - x * points.shadow().w());
        Optional<SheetPoint> tip = points.shadowTip(foot, head);
        if (tip.isEmpty() || beside < 1) {
            return;
        }
        near(
                tip,
                meet.x() / meet.w(),
                meet.y() / meet.w(),
                1e-7 * (1 + Math.abs(tip.get().x())));
    }

    private static Homogeneous cross(Homogeneous a, Homogeneous b) {
        return new Homogeneous(
                a.y() * b.w() - a.w() * b.y(), a.w() * b.x() - a.x() * b.w(), a.x() * b.y() - a.y() * b.x());
    }

    private static void near(Optional<SheetPoint> tip, double x, double y, double mm) {
        assertThat(tip).hasValueSatisfying(at -> {
            assertThat(at.x()).isCloseTo(x, within(mm));
            assertThat(at.y()).isCloseTo(y, within(mm));
        });
    }
}
