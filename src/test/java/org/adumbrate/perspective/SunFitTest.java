package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunFitTest {
    private static final View VIEW = new View(1000, new SheetPoint(800, 600), 1.6, 0);
    private static final View SHEET = new View(260, new SheetPoint(214, 150.5), 4.25, 0);

    private static SunSample sample(double fx, double fy, double hx, double hy, double tx, double ty) {
        return new SunSample(new SheetPoint(fx, fy), new SheetPoint(hx, hy), new SheetPoint(tx, ty));
    }

    /** The worked examples of the construction read backwards; the second is behind the viewer, 150 and not -30. */
    @ParameterizedTest
    @CsvSource({
        "-90, 40, 675, 800, 675, 425, 1121.907597, 800",
        "150, 35, 1050, 866.666667, 1050, 450, 768.633520, 775.978280",
        "25, 20, 900, 760, 900, 580, 602.453274, 889.965823",
        "-20, 30, 633.333333, 733.333333, 633.333333, 400, 867.324361, 891.459231"
    })
    void findsTheSunOfTheWorkedExamples(
            double azimuth, double altitude, double fx, double fy, double hx, double hy, double tx, double ty)
            throws Refusal {
        FittedSun fitted = SunFit.of(List.of(sample(fx, fy, hx, hy, tx, ty)), VIEW);
        assertThat(fitted.direction().degreesTo(SunDirection.of(azimuth, altitude, 0)))
                .isLessThan(1e-5);
        assertThat(fitted.residualsMm()).hasSize(1);
        assertThat(fitted.worstMm()).isLessThan(1e-9);
    }

    /** Any sun, any turn: the sun that cast one shadow is found again exactly. */
    @Property(seed = "1")
    void findsTheSunThatCastAShadow(
            @ForAll @DoubleRange(min = 0, max = 359) double azimuth,
            @ForAll @DoubleRange(min = 8, max = 89.9) double altitude,
            @ForAll @DoubleRange(min = 0, max = 430) double x,
            @ForAll @DoubleRange(min = 170, max = 270) double y,
            @ForAll @DoubleRange(min = 5, max = 60) double height,
            @ForAll @DoubleRange(min = -0.7, max = 0.7) double turn)
            throws Refusal {
        View view = new View(260, new SheetPoint(214, 150.5), 4.25, turn);
        SunDirection sun = SunDirection.of(azimuth, altitude, 0);
        SheetPoint foot = new SheetPoint(x, y);
        SheetPoint head = new SheetPoint(x, y - height);
        Optional<SheetPoint> tip = VanishingPoints.of(view, sun).shadowTip(foot, head);
        if (tip.isEmpty() || tip.get().y() > 5000 || tip.get().y() < 152) {
            return;
        }
        FittedSun fitted = SunFit.of(List.of(new SunSample(foot, head, tip.get())), view);
        assertThat(fitted.direction().degreesTo(sun)).isLessThan(1e-6);
    }

    /** Points that are read off the sheet to 0.1 mm each way: six shadows tell the sun to a degree or two at the worst. */
    @Property(tries = 200, seed = "1")
    void findsTheSunFromSeveralRoughShadows(
            @ForAll @DoubleRange(min = 90, max = 270) double azimuth,
            @ForAll @DoubleRange(min = 25, max = 65) double altitude,
            @ForAll long seed)
            throws Refusal {
        Random random = new Random(seed);
        SunDirection sun = SunDirection.of(azimuth, altitude, 0);
        List<SunSample> samples = new ArrayList<>();
        for (int k = 0; k < 6; k++) {
            SheetPoint foot = new SheetPoint(40 + 60 * k, 200 + 10 * k);
            SheetPoint head = new SheetPoint(foot.x(), foot.y() - 30);
            SheetPoint tip =
                    VanishingPoints.of(SHEET, sun).shadowTip(foot, head).orElseThrow();
            samples.add(new SunSample(rough(foot, random), rough(head, random), rough(tip, random)));
        }
        FittedSun fitted = SunFit.of(samples, SHEET);
        assertThat(fitted.direction().degreesTo(sun)).isLessThan(2.5);
        assertThat(fitted.residualsMm()).hasSize(6);
        assertThat(fitted.worstMm()).isLessThan(1.5);
    }

    private static SheetPoint rough(SheetPoint point, Random random) {
        return new SheetPoint(point.x() + 0.1 * random.nextGaussian(), point.y() + 0.1 * random.nextGaussian());
    }

    /** No sun near by casts tips that are closer in the sense of least squares. */
    @Property(tries = 50, seed = "1")
    void theFitIsTheLeastOfSquares(@ForAll @DoubleRange(min = 0, max = 6.2) double around) throws Refusal {
        List<SunSample> samples = List.of(
                sample(100, 230, 100, 200, 130.5, 212),
                sample(200, 240, 200, 205, 233, 219.6),
                sample(330, 225, 330, 195, 352, 208));
        FittedSun fitted = SunFit.of(samples, SHEET);
        SunDirection near = turned(fitted.direction(), around);
        VanishingPoints points = VanishingPoints.of(SHEET, near);
        double squares = 0;
        for (SunSample one : samples) {
            squares += Math.pow(
                    points.shadowTip(one.foot(), one.head()).orElseThrow().distanceTo(one.tip()), 2);
        }
        double least = fitted.residualsMm().stream().mapToDouble(mm -> mm * mm).sum();
        assertThat(squares).isGreaterThan(least);
    }

    private static SunDirection turned(SunDirection sun, double around) {
        return SunDirection.of(
                sun.azimuthDeg(0) + 0.01 * Math.sin(around), sun.altitudeDeg() + 0.01 * Math.cos(around), 0);
    }

    /** A guess of the focal length and of the principal point's x tells a wrong sun that casts the right shadows. */
    @Property(seed = "1")
    void shadowsOnFloorsAreRightForAnyFocalLength(
            @ForAll @DoubleRange(min = 50, max = 2000) double focal,
            @ForAll @DoubleRange(min = -100, max = 500) double principalX,
            @ForAll @DoubleRange(min = 90, max = 270) double azimuth,
            @ForAll @DoubleRange(min = 20, max = 70) double altitude,
            @ForAll @DoubleRange(min = 20, max = 400) double x,
            @ForAll @DoubleRange(min = 160, max = 270) double y)
            throws Refusal {
        SunDirection sun = SunDirection.of(azimuth, altitude, 0);
        VanishingPoints truth = VanishingPoints.of(SHEET, sun);
        SheetPoint foot = new SheetPoint(300, 230);
        SheetPoint head = new SheetPoint(300, 200);
        View guess = new View(focal, new SheetPoint(principalX, 150.5), 4.25, 0);
        SunSample sample = new SunSample(foot, head, truth.shadowTip(foot, head).orElseThrow());
        VanishingPoints guessed =
                VanishingPoints.of(guess, SunFit.of(List.of(sample), guess).direction());
        SheetPoint otherFoot = new SheetPoint(x, y);
        SheetPoint otherHead = new SheetPoint(x, y - 25);
        SheetPoint right = truth.shadowTip(otherFoot, otherHead).orElseThrow();
        assertThat(guessed.shadowTip(otherFoot, otherHead).orElseThrow().distanceTo(right))
                .isLessThan(1e-6);
    }

    @ParameterizedTest
    @CsvSource({
        "100, 230, 100, 231, 120, 220, head is not above its foot",
        "100, 230, 100, 230, 120, 220, head is not above its foot",
        "100, 230, 110, 200, 120, 220, not straight above",
        "100, 150.5, 100, 120, 120, 220, on the horizon",
        "100, 230, 100, 200, 120, 150.5, on the horizon",
        "100, 230, 100, 200, 120, 140, different sides of the horizon"
    })
    void whatCannotBeAShadowIsRefused(double fx, double fy, double hx, double hy, double tx, double ty, String why) {
        assertThatThrownBy(() -> SunFit.of(List.of(sample(fx, fy, hx, hy, tx, ty)), SHEET))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("the shadow sample with its foot at (100.0, ")
                .hasMessageContaining(why);
    }

    @Test
    void aShadowOnTheFootTellsOfASunOverhead() throws Refusal {
        FittedSun fitted = SunFit.of(List.of(sample(100, 230, 100, 200, 100, 230)), SHEET);
        assertThat(fitted.direction().altitudeDeg()).isCloseTo(90, within(1e-9));
    }

    /** On a floor above the eye feet and tips are seen above the horizon. */
    @Test
    void aFloorAboveTheEyeWillDoAsWell() throws Refusal {
        SunDirection sun = SunDirection.of(200, 40, 0);
        SheetPoint foot = new SheetPoint(120, 100);
        SheetPoint head = new SheetPoint(120, 85);
        SheetPoint tip = VanishingPoints.of(SHEET, sun).shadowTip(foot, head).orElseThrow();
        assertThat(SunFit.of(List.of(new SunSample(foot, head, tip)), SHEET)
                        .direction()
                        .degreesTo(sun))
                .isLessThan(1e-6);
    }
}
