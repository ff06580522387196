package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;

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
                .containsPattern("\\d\\.\\d mm beside its place"));
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
        assertThat(check(336, 10, shadow(214, 270, 100)))
                .hasValueSatisfying(message -> assertThat(message).contains("would fall behind the viewer"));
    }
}
