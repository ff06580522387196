package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;

class SunCheckTest {
    private static final View VIEW = new View(260, new SheetPoint(214, 150.5), 4.25, 0);
    private static final double NORTH = 24;

    /** The shadow of an upright under a sun at azimuth 190 and altitude 47. */
    private static SunSample shadow(double x, double y, double height) {
        SheetPoint foot = new SheetPoint(x, y);
        SheetPoint head = new SheetPoint(x, y - height);
        return new SunSample(
                foot,
                head,
                VanishingPoints.of(VIEW, SunDirection.of(190, 47, NORTH))
                        .shadowTip(foot, head)
                        .orElseThrow());
    }

    private static Optional<String> check(double azimuth, double altitude, SunSample... samples) throws Refusal {
        return SunCheck.of(SunDirection.of(azimuth, altitude, NORTH), List.of(samples), VIEW, NORTH);
    }

    @Test
    void suns1DegreeApartAgree() throws Refusal {
        assertThat(check(190, 48, shadow(334.8, 228.3, 33))).isEmpty();
    }

    @Test
    void sunsFarApartDisagreeAndBothAreTold() throws Refusal {
        assertThat(check(214, 47, shadow(334.8, 228.3, 33))).hasValueSatisfying(message -> assertThat(message)
                .contains("azimuth 214.0 and altitude 47.0")
                .contains("azimuth 190.0 and altitude 47.0")
                .containsPattern("16\\.\\d degrees apart")
                .containsPattern("\\d\\.\\d mm from where the stated sun casts it"));
    }

    /** A tip of a short upright lies within 1 mm under a sun 5 degrees off: the drawing cannot tell the two apart. */
    @Test
    void aShortUprightDoesNotContradict() throws Refusal {
        assertThat(check(195, 47, shadow(334.8, 228.3, 6))).isEmpty();
        assertThat(check(195, 47, shadow(334.8, 228.3, 6), shadow(200, 250, 80)))
                .isPresent();
    }

    @Test
    void aShadowThatWouldFallBehindTheViewerDisagrees() throws Refusal {
        assertThat(check(336, 10, shadow(214, 270, 100))).hasValueSatisfying(message -> assertThat(message)
                .contains("before the viewer, and the stated sun casts it behind"));
    }

    /** Two of three shadows agree; the third climbs a wall, and tells neither the sun nor goes untold. */
    @Test
    void theOneOfThreeShadowsThatStraysIsLeftOutAndTold() throws Refusal {
        SunSample stray = shadow(330, 225, 30);
        stray = new SunSample(
                stray.foot(),
                stray.head(),
                new SheetPoint(stray.tip().x() + 2, stray.tip().y() - 6));
        List<SunSample> samples = List.of(shadow(100, 230, 30), stray, shadow(200, 240, 35));
        FittedSun fitted = SunFit.of(samples, VIEW);
        assertThat(fitted.direction().degreesTo(SunDirection.of(190, 47, NORTH)))
                .isLessThan(1e-6);
        assertThat(fitted.worstMm()).isCloseTo(Math.hypot(2, 6), within(1e-6));
        assertThat(SunCheck.among(samples, fitted)).hasValueSatisfying(message -> assertThat(message)
                .contains("the 3 shadow samples")
                .contains("foot at (330.0, 225.0)")
                .contains("6.3 mm from where"));
        assertThat(SunCheck.among(samples.subList(0, 1), SunFit.of(samples.subList(0, 1), VIEW)))
                .isEmpty();
    }

    /** Shadows of which one lies behind the viewer under the sun of the other: no sun casts both, and it is told. */
    @Test
    void shadowsOfNoCommonSunAreTold() throws Refusal {
        SunSample toward = new SunSample(new SheetPoint(214, 160), new SheetPoint(214, 150), new SheetPoint(214, 270));
        SunSample away = new SunSample(new SheetPoint(214, 270), new SheetPoint(214, 170), new SheetPoint(214, 200));
        List<SunSample> samples = List.of(away, toward);
        assertThat(SunCheck.among(samples, SunFit.of(samples, VIEW))).isPresent();
    }
}
