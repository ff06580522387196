package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;

class FocalFitTest {
    private static DepthReading reading(double depth, double heightMm) {
        return new DepthReading(new HeightLine(new SheetPoint(200, 230), new SheetPoint(200, 230 - heightMm)), depth);
    }

    /** A person of 1.65 m, 14 m off, drawn 30.642857 mm tall: 14 · 30.642857 / 1.65 = 260. */
    @Test
    void oneLineTellsTheFocalLength() throws Refusal {
        FittedFocal fitted = FocalFit.of(List.of(reading(14, 30.642857)), 1.65);
        assertThat(fitted.focalMm()).isCloseTo(260, within(1e-5));
        assertThat(fitted.errorMm()).isZero();
    }

    @Property(tries = 100, seed = "1")
    void halfOfTheLinesMayBeHiddenInPart(@ForAll long seed) throws Refusal {
        Random random = new Random(seed);
        List<DepthReading> readings = new ArrayList<>();
        for (int k = 0; k < 20; k++) {
            double depth = 14 + k;
            double tall = 260 * 1.65 / depth;
            readings.add(reading(depth, k % 3 == 0 ? 0.6 * tall : tall + 0.1 * random.nextGaussian()));
        }
        FittedFocal fitted = FocalFit.of(readings, 1.65);
        assertThat(fitted.focalMm()).isCloseTo(260, within(3.5));
        assertThat(fitted.errorMm()).isBetween(0.05, 3.0);
    }

    @Test
    void depthsOfAnotherViewAreRefused() {
        refused(
                List.of(reading(14, 30.6), reading(14, 20), reading(30, 30), reading(8, 25)),
                "does not go with the height");
    }

    @Test
    void noDepthTellsNothing() {
        refused(List.of(), "no height line stands on a surface");
        refused(List.of(reading(0, 30)), "no height line stands on a surface");
    }

    private static void refused(List<DepthReading> readings, String why) {
        assertThatThrownBy(() -> FocalFit.of(readings, 1.65))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(why);
    }
}
