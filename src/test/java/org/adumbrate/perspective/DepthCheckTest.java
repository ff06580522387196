package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;

class DepthCheckTest {
    private static final View VIEW = new View(260, new SheetPoint(214, 150.5), 4.25, 0);
    private static final double[] DEPTHS = {14, 16, 19, 22};

    /** The pass reaches from 4 to 40 m in truth; this is what stands in it by another range. */
    private static Optional<Contradiction> check(double near, double far, double focal) {
        List<DepthReading> metres = new ArrayList<>();
        List<DepthReading> levels = new ArrayList<>();
        for (double depth : DEPTHS) {
            HeightLine line = HeightLinesOnFloors.line(VIEW, 1, depth, 0);
            double level = (depth - 4) / 36;
            levels.add(new DepthReading(line, level));
            metres.add(new DepthReading(line, near + level * (far - near)));
        }
        return DepthCheck.of(metres, levels, focal, DrawnHeights.HEIGHT);
    }

    @Test
    void theTrueRangeIsNotTold() {
        assertThat(check(4, 40, 260)).isEmpty();
    }

    @Test
    void aWrongRangeIsToldWithBothDistancesAndTheTrueRange() {
        assertThat(check(4, 60, 260).orElseThrow().text())
                .contains("away, but its")
                .contains("near 4.00 m to far 40.00 m");
        assertThat(check(7, 43, 260)).isPresent();
    }

    @Test
    void aWrongFocalLengthIsTold() {
        assertThat(check(4, 40, 312).orElseThrow().text()).contains("focal length of 312.0 mm");
    }

    @Test
    void oneLineSaysNothing() {
        DepthReading reading = new DepthReading(HeightLinesOnFloors.line(VIEW, 1, 15, 0), 30);
        assertThat(DepthCheck.of(List.of(reading), List.of(), 260, DrawnHeights.HEIGHT))
                .isEmpty();
    }
}
