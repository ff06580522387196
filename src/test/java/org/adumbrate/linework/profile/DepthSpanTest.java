package org.adumbrate.linework.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.SheetPaths;
import org.junit.jupiter.api.Test;

class DepthSpanTest {
    /** A metre farther away with every millimetre to the right. */
    private static final DepthField RAMP = SheetPoint::x;

    private static DepthSpan span(List<VectorPath<SheetPoint>> lines, DepthField depth) {
        return DepthSpan.of(lines, depth, 0).orElseThrow();
    }

    @Test
    void itReachesAsFarAsTheLinesAndNotAsThePass() {
        DepthSpan span = span(SheetPaths.of("M 20 0 L 30 10 M 30 40 C 40 20 50 20 60 40"), RAMP);
        assertThat(span.nearM()).isCloseTo(20, within(1.0));
        assertThat(span.farM()).isCloseTo(60, within(1.0));
    }

    @Test
    void theWayBackOfAClosedLineCounts() {
        // three sides at 20, the fourth runs from 20 out to 50 and is drawn by closing
        DepthField depth = point -> point.y() > 9.9 ? 20 : 20 + point.x();
        DepthSpan span = span(SheetPaths.of("M 30 0 L 30 10 L 0 10 L 0 0 Z"), depth);
        assertThat(span.farM()).isCloseTo(50, within(1.0));
    }

    @Test
    void aGlimpseFarAwaySettlesNothing() {
        List<VectorPath<SheetPoint>> lines =
                new ArrayList<>(SheetPaths.of("M 20 0 L 40 0 M 20 5 L 40 5 M 20 9 L 40 9"));
        lines.add(SheetPaths.line(900, 0, 900, 0.4));
        assertThat(span(lines, RAMP).farM()).isCloseTo(40, within(1.0));
        lines.add(SheetPaths.line(900, 0, 900, 10));
        assertThat(span(lines, RAMP).farM()).isEqualTo(900);
    }

    @Test
    void linesOnOneWallDoNotFadeByTheErrorsOfThePass() {
        DepthSpan span = span(SheetPaths.of("M 0 0 L 50 0"), point -> 20 + 0.01 * Math.sin(point.x()));
        assertThat(span.nearM()).isCloseTo(20, within(0.01));
        assertThat(span.farM()).isCloseTo(22, within(0.02));
    }

    @Test
    void backgroundAndWhatLiesOffThePassCountForNothing() {
        DepthField depth = point -> point.x() < 10 ? Double.NaN : point.x() > 40 ? Double.POSITIVE_INFINITY : point.x();
        DepthSpan span = span(SheetPaths.of("M 0 0 L 90 0"), depth);
        assertThat(span.nearM()).isCloseTo(10, within(1.0));
        assertThat(span.farM()).isCloseTo(40, within(1.0));
        assertThat(DepthSpan.of(SheetPaths.of("M 0 0 L 9 0"), depth, 0)).isEmpty();
        assertThat(DepthSpan.of(List.of(), RAMP, 0)).isEmpty();
    }
}
