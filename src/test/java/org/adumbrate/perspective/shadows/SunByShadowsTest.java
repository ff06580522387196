package org.adumbrate.perspective.shadows;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.StraightEdge;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.SunFit;
import org.adumbrate.perspective.SunSample;
import org.adumbrate.perspective.VanishingPoints;
import org.adumbrate.perspective.View;
import org.adumbrate.raster.GreyImage;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.registration.LooseEdges;
import org.adumbrate.registration.PassImage;
import org.junit.jupiter.api.Test;

/** Courtyards rendered under known suns: what it states is right, and what it is not sure of it does not state. */
class SunByShadowsTest {
    private static final int WIDTH = Integer.getInteger("courtyardWidth", 900);
    private static final int SUNS = Integer.getInteger("courtyardSuns", 4);

    private final double[] apart = new double[2];

    private static List<StraightEdge> edges(Courtyard yard, GreyImage pass) {
        double scale = Courtyard.SHEET.widthMm() / pass.size().width();
        Affine<RasterPoint, SheetPoint> toSheet = Affine.scaling(Space.RASTER, Space.SHEET, scale, scale);
        return LooseEdges.of(PassImage.full(pass), toSheet, LinePattern.of(yard.lines()));
    }

    private Optional<ShadowSun> told(Courtyard yard, GreyImage pass) {
        try {
            return Optional.of(SunByShadows.of(edges(yard, pass), yard.view()));
        } catch (Refusal reason) {
            return Optional.empty();
        }
    }

    private void measure(ShadowSun told, SunDirection truth) {
        apart[0] = Math.abs(Math.IEEEremainder(told.direction().azimuthDeg(0) - truth.azimuthDeg(0), 360));
        apart[1] = Math.abs(told.direction().altitudeDeg() - truth.altitudeDeg());
    }

    @Test
    void neverTellsASunThatIsFartherOffThanThreeErrors() {
        Random random = new Random(Long.getLong("courtyardSeed", 20261128));
        int told = 0;
        for (int k = 0; k < SUNS; k++) {
            Courtyard yard = new Courtyard(random.nextLong(), k % 3 == 0 ? 25 * random.nextDouble() - 12 : 0, WIDTH);
            SunDirection truth = SunDirection.of(130 + 100 * random.nextDouble(), 20 + 45 * random.nextDouble(), 0);
            Optional<ShadowSun> sun = told(yard, yard.shadows(truth));
            if (sun.isPresent()) {
                told++;
                measure(sun.get(), truth);
                assertThat(sun.get().errorDeg()).isLessThan(1);
                assertThat(Math.max(apart[0], apart[1]))
                        .as("sun %s told as %s", truth, sun.get())
                        .isLessThan(3 * sun.get().errorDeg());
            }
        }
        assertThat(told).isGreaterThanOrEqualTo(SUNS / 2);
    }

    @Test
    void refusesWhereNothingCastsAShadow() {
        Courtyard yard = new Courtyard(1, 0, 400);
        GreyImage blank = yard.shadows(SunDirection.of(0, 90, 0));
        Arrays.fill(blank.light(), 1);
        assertThat(edges(yard, blank)).isEmpty();
        assertThatThrownBy(() -> SunByShadows.of(edges(yard, blank), yard.view()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("too few shadows of uprights");
    }

    @Test
    void refusesDirectionsAtRandom() {
        Courtyard yard = new Courtyard(1, 0, 400);
        Random random = new Random(5);
        for (int k = 0; k < 50; k++) {
            List<StraightEdge> noise = random.doubles(120)
                    .mapToObj(x -> {
                        SheetPoint from = new SheetPoint(420 * x, 280 * random.nextDouble());
                        double turn = Math.PI * random.nextDouble();
                        double length = 3 + 20 * random.nextDouble();
                        return new StraightEdge(
                                from,
                                new SheetPoint(from.x() + length * Math.cos(turn), from.y() + length * Math.sin(turn)),
                                0.03);
                    })
                    .toList();
            assertThatThrownBy(() -> SunByShadows.of(noise, yard.view())).isInstanceOf(Refusal.class);
        }
    }

    @Test
    void aSampleOnTheSheetCastsTheSameShadowsWithAnyFocalLength() throws Refusal {
        View truth = new View(300, new SheetPoint(200, 130), 1.7, 0);
        SunDirection sun = SunDirection.of(214, 47, 0);
        SunSample sample = ShownSample.of(truth, sun, Courtyard.SHEET).orElseThrow();
        View supposed = new View(500, new SheetPoint(200, 130), 1.7, 0);
        SunDirection read = SunFit.of(List.of(sample), supposed).direction();
        SheetPoint foot = new SheetPoint(300, 220);
        SheetPoint head = new SheetPoint(300, 190);
        SheetPoint expected =
                VanishingPoints.of(truth, sun).shadowTip(foot, head).orElseThrow();
        assertThat(VanishingPoints.of(supposed, read)
                        .shadowTip(foot, head)
                        .orElseThrow()
                        .distanceTo(expected))
                .isLessThan(1e-6);
        assertThat(SunFit.of(List.of(sample), truth).direction().degreesTo(sun)).isLessThan(1e-6);
    }
}
