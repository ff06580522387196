package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;

/** Any camera with an upright picture, one to four floors, ends 0.1 mm off, one line in five hidden in part. */
class HeightFitPropertyTest {
    private static final double NOISE = 0.1;
    private static final double STRAYS = 0.2;

    /** Errors beyond this many standard errors happen once in thousands, even with as few spare lines as here. */
    private static final double SURE = 6;

    private static FittedFloor nearest(FittedHeights fitted, double eye) {
        return fitted.floors().stream()
                .min(Comparator.comparingDouble(floor -> Math.abs(floor.eyeHeightM() - eye)))
                .orElseThrow();
    }

    @Property(tries = 60, seed = "20260101")
    void horizonFloorsAndHeadsComeBack(
            @ForAll @IntRange(min = 1, max = 100_000) int seed, @ForAll @IntRange(min = 1, max = 4) int floors) {
        DrawnHeights drawn = new DrawnHeights(seed, floors, 8, NOISE, STRAYS);
        FittedHeights fitted = fit(drawn.lines);
        double off = Math.abs(fitted.horizonMm() - drawn.view.horizonMm());
        assertThat(off).isLessThan(SURE * fitted.horizonErrorMm());
        for (double elevation : drawn.elevations) {
            double eye = drawn.view.eyeHeightM() - elevation;
            FittedFloor floor = nearest(fitted, eye);
            assertThat(Math.abs(floor.eyeHeightM() - eye)).isLessThan(SURE * floor.eyeHeightErrorM());
            HeightLine person = drawn.person(1.8, drawn.between(9, 20), elevation);
            double missed = headOff(fitted, person, floor);
            assertThat(missed).isLessThan(0.03 * person.heightMm());
        }
    }

    private static FittedHeights fit(List<HeightLine> lines) {
        try {
            return HeightFit.of(lines, DrawnHeights.HEIGHT, Stated.NOTHING);
        } catch (Refusal refusal) {
            throw new AssertionError(refusal);
        }
    }

    private static double headOff(FittedHeights fitted, HeightLine person, FittedFloor floor) {
        try {
            SheetPoint head = fitted.figure(person.foot(), 1.8, floor);
            return head.distanceTo(person.head());
        } catch (Refusal refusal) {
            throw new AssertionError(refusal);
        }
    }

    /**
     * The standard error is no flattery: errors of the horizon, each divided by the standard error told with it, spread by
     * about 1. With n spare lines they follow Student's t, whose spread is a little more.
     */
    @Test
    void theStandardErrorIsHonest() {
        List<Double> scaled = new ArrayList<>();
        List<Double> eyes = new ArrayList<>();
        for (int seed = 0; seed < 160; seed++) {
            DrawnHeights drawn = new DrawnHeights(seed, 1 + seed % 3, 6, NOISE, 0);
            FittedHeights fitted = fit(drawn.lines);
            scaled.add((fitted.horizonMm() - drawn.view.horizonMm()) / fitted.horizonErrorMm());
            double eye = drawn.view.eyeHeightM() - drawn.elevations.get(0);
            FittedFloor floor = nearest(fitted, eye);
            eyes.add((floor.eyeHeightM() - eye) / floor.eyeHeightErrorM());
        }
        assertHonest(scaled);
        assertHonest(eyes);
    }

    private static void assertHonest(List<Double> scaled) {
        double mean = scaled.stream().mapToDouble(z -> z).average().orElseThrow();
        double spread =
                Math.sqrt(scaled.stream().mapToDouble(z -> z * z).average().orElseThrow());
        long far = scaled.stream().filter(z -> Math.abs(z) > 2).count();
        assertThat(spread).isBetween(0.85, 1.25);
        assertThat(Math.abs(mean)).isLessThan(0.3);
        assertThat(far).isBetween(2L, 18L);
    }
}
