package org.adumbrate.linework.region;

import static org.adumbrate.linework.region.Drawn.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.junit.jupiter.api.Test;

class HatchLinesTest {
    private static double length(List<VectorPath<SheetPoint>> lines) {
        return lines.stream().mapToDouble(VectorPath::length).sum();
    }

    @Test
    void levelLinesLieAtWholeSpacingsFromTheTop() {
        assertThat(HatchLines.lines(rectangle(10, 9.5, 20, 12.5), 0, 1.5, false))
                .hasToString("[M 10.0 10.5 L 20.0 10.5, M 10.0 12.0 L 20.0 12.0]");
        assertThat(HatchLines.lines(rectangle(3.5, 10, 4.5, 20), 90, 1, false)).hasToString("[M 4.0 20.0 L 4.0 10.0]");
    }

    @Test
    void atFortyFiveDegreesLinesRiseToTheRight() {
        List<VectorPath<SheetPoint>> lines = HatchLines.lines(rectangle(10, 10, 20, 20), 45, Math.sqrt(2), false);
        // x + y is even on all of them: the diagonal from (10, 20) to (20, 10) is one
        assertThat(lines).hasSize(9).anySatisfy(line -> assertThat(line.length())
                .isCloseTo(10 * Math.sqrt(2), within(1e-9)));
        assertThat(length(lines)).isCloseTo(100 / Math.sqrt(2), within(1e-9));
    }

    @Test
    void holesAreLeftOutAndASecondSetCrossesTheFirst() {
        Region<SheetPoint> frame = rectangle(0, 0, 30, 30).minus(rectangle(10, 10, 20, 20));
        List<VectorPath<SheetPoint>> lines = HatchLines.lines(frame, 0, 1, false);
        assertThat(lines.get(15).runs()).isEqualTo(2);
        assertThat(length(HatchLines.lines(frame, 0, 1, true))).isCloseTo(2 * length(lines), within(1e-6));
    }

    @Test
    void neighboursAreHatchedInOneSweep() {
        List<VectorPath<SheetPoint>> left = HatchLines.lines(rectangle(10, 10, 23.7, 50), 30, 1.3, false);
        List<VectorPath<SheetPoint>> right = HatchLines.lines(rectangle(23.7, 10, 40, 50), 30, 1.3, false);
        List<VectorPath<SheetPoint>> both = HatchLines.lines(rectangle(10, 10, 40, 50), 30, 1.3, false);
        // but for crumbs of up to a tenth of the spacing at either end
        assertThat(length(left) + length(right)).isCloseTo(length(both), within(0.6));
    }

    @Test
    void crumbsAreDropped() {
        assertThat(HatchLines.lines(rectangle(10, 10, 10.11, 20), 0, 1, false)).isNotEmpty();
        assertThat(HatchLines.lines(rectangle(10, 10, 10.09, 20), 0, 1, false)).isEmpty();
    }

    @Test
    void etchedStrokesAreStaggeredFromRowToRow() {
        List<VectorPath<SheetPoint>> rows = HatchLines.etched(rectangle(0, 0.5, 12, 2.5), 0, 1, 3, 3);
        assertThat(rows)
                .hasToString("[M 3.0 1.0 L 6.0 1.0 M 9.0 1.0 L 12.0 1.0, M 0.0 2.0 L 3.0 2.0 M 6.0 2.0 L 9.0 2.0]");
    }

    @Test
    void measuresThatWouldFloodTheSheetAreRefused() {
        assertThatThrownBy(() -> HatchLines.lines(rectangle(0, 0, 1, 1), 45, 0.001, false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0.001");
        assertThatThrownBy(() -> HatchLines.lines(rectangle(0, 0, 1, 1), Double.NaN, 1, false))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HatchLines.etched(rectangle(0, 0, 1, 1), 0, 1, 0, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** As many mm of line as the area over the spacing, which the rule of Cavalieri gives. */
    @Property(tries = 200, seed = "4")
    void lengthIsAreaOverSpacing(
            @ForAll @DoubleRange(min = -400, max = 400) double angle,
            @ForAll @DoubleRange(min = 0.3, max = 2) double spacing) {
        Region<SheetPoint> region =
                rectangle(10, 10, 110, 90).minus(rectangle(30, 30, 60, 80)).grown(3);
        double lines = length(HatchLines.lines(region, angle, spacing, false));
        assertThat(lines * spacing).isCloseTo(region.area(), within(0.04 * region.area()));
    }
}
