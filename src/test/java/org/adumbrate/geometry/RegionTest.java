package org.adumbrate.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RegionTest {
    private static Region<SheetPoint> square(double left, double top, double side) {
        return Region.rectangle(Space.SHEET, left, top, left + side, top + side);
    }

    @Test
    void aRunInsideAnotherIsAHole() {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        ring(path, 0, 0, 10);
        ring(path, 2, 2, 4);
        Region<SheetPoint> region = Region.evenOdd(path.build(), 0.01);
        assertThat(region.area()).isCloseTo(100 - 16, within(1e-9));
        assertThat(region.contains(new SheetPoint(3, 3))).isFalse();
        assertThat(region.contains(new SheetPoint(8, 8))).isTrue();
        assertThat(region.outline().runs()).isEqualTo(2);
        assertThat(Region.evenOdd(region.outline(), 0.01)).isEqualTo(region);
    }

    @Test
    void aCircleOfCurvesHasTheAreaOfACircle() {
        double k = 10 * 4 * (Math.sqrt(2) - 1) / 3;
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(10, 0);
        path.curveTo(10, k, k, 10, 0, 10);
        path.curveTo(-k, 10, -10, k, -10, 0);
        path.curveTo(-10, -k, -k, -10, 0, -10);
        path.curveTo(k, -10, 10, -k, 10, 0);
        path.close();
        // the cubic circle is off by 0.03 % of the radius at most, the chords by the tolerance
        assertThat(Region.evenOdd(path.build(), 0.001).area()).isCloseTo(100 * Math.PI, within(0.15));
    }

    @Test
    void linesAreCutAtItsBounds() {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(-5, 5);
        path.lineTo(15, 5);
        Region<SheetPoint> region = square(0, 0, 10);
        assertThat(region.clip(path.build(), 0.01).toString()).isEqualTo("M 0.0 5.0 L 10.0 5.0");
        assertThat(region.clipAway(path.build(), 0.01).length()).isCloseTo(10, within(1e-9));
        assertThat(region.clipAway(path.build(), 0.01).runs()).isEqualTo(2);
    }

    @Test
    void piecesStayApart() {
        Region<SheetPoint> both = square(0, 0, 1).union(square(5, 5, 2));
        assertThat(both.pieces()).extracting(Region::area).containsExactlyInAnyOrder(1.0, 4.0);
        assertThat(Region.of(Space.SHEET, List.of(List.of(new SheetPoint(0, 0), new SheetPoint(1, 1))))
                        .isEmpty())
                .isTrue();
    }

    @Test
    void anImageIsFoundWhereItIs() {
        Region<SheetPoint> here = square(0, 0, 10);
        assertThat(here.extent()).contains(new Extent(0, 0, 10, 10));
        Region<SheetPoint> there = here.transform(Affine.scalingThenShift(Space.SHEET, Space.SHEET, 2, 1, 100, 50));
        assertThat(there.extent()).contains(new Extent(100, 50, 120, 60));
        assertThat(there.within(square(100, 50, 5)).area()).isCloseTo(25, within(1e-9));
        assertThat(there.minus(square(100, 50, 5)).area()).isCloseTo(175, within(1e-9));
        assertThat(Region.empty(Space.SHEET).extent()).isEmpty();
    }

    @Test
    void windingTellsWhatIsInside() {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        ring(path, 0, 0, 10);
        ring(path, 2, 2, 4);
        assertThat(Region.nonZero(path.build(), 0.01).area()).isCloseTo(100, within(1e-9));
        path.moveTo(7, 7);
        path.lineTo(7, 9);
        path.lineTo(9, 9);
        path.lineTo(9, 7);
        path.close();
        // the last ring goes the other way round and so is a hole
        assertThat(Region.nonZero(path.build(), 0.01).area()).isCloseTo(96, within(1e-9));
    }

    /** A five-pointed star drawn with one line: its middle is wound around twice. */
    @Test
    void aStarHasAMiddleByOneRuleOnly() {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        for (int k = 0; k < 5; k++) {
            double a = 4 * Math.PI * k / 5;
            if (k == 0) {
                path.moveTo(10 * Math.cos(a), 10 * Math.sin(a));
            } else {
                path.lineTo(10 * Math.cos(a), 10 * Math.sin(a));
            }
        }
        path.close();
        Region<SheetPoint> whole = Region.nonZero(path.build(), 0.01);
        Region<SheetPoint> points = Region.evenOdd(path.build(), 0.01);
        // a pentagram of circumradius R covers 1.1226 R^2, and the pentagon in its middle 0.3469 R^2
        assertThat(whole.area()).isCloseTo(112.257, within(0.01));
        assertThat(points.area()).isCloseTo(112.257 - 34.690, within(0.01));
        assertThat(points.contains(new SheetPoint(0, 0))).isFalse();
        assertThat(whole.contains(new SheetPoint(0, 0))).isTrue();
    }

    @Test
    void manyAreUnitedAtOnce() {
        assertThat(Region.union(Space.SHEET, List.of(square(0, 0, 2), square(1, 0, 2), square(9, 9, 1)))
                        .area())
                .isCloseTo(7, within(1e-9));
        assertThat(Region.union(Space.SHEET, List.of()).isEmpty()).isTrue();
    }

    @Test
    void holesThatAreNarrowAllAlongAreFilledAndOpenGapsStay() {
        Region<SheetPoint> crack = Region.rectangle(Space.SHEET, 1, 1, 1.1, 9);
        Region<SheetPoint> gap = Region.rectangle(Space.SHEET, 8, 5, 8.1, 10);
        Region<SheetPoint> body =
                square(0, 0, 10).minus(crack).minus(square(3, 3, 2)).minus(gap);
        assertThat(body.withoutCracks(0.2).area()).isCloseTo(100 - 4 - 0.5, within(1e-9));
        assertThat(body.withoutCracks(0.05).area()).isCloseTo(body.area(), within(1e-9));
    }

    @Property(tries = 200, seed = "1")
    void areasAddUp(
            @ForAll @DoubleRange(min = -20, max = 20) double left,
            @ForAll @DoubleRange(min = -20, max = 20) double top,
            @ForAll @DoubleRange(min = 0.5, max = 20) double side) {
        Region<SheetPoint> a = square(0, 0, 10);
        Region<SheetPoint> b = square(left, top, side);
        assertThat(a.union(b).area() + a.within(b).area()).isCloseTo(a.area() + b.area(), within(1e-6));
        assertThat(a.minus(b).area() + a.within(b).area()).isCloseTo(a.area(), within(1e-6));
    }

    private static void ring(VectorPath.Builder<SheetPoint> path, double x, double y, double side) {
        path.moveTo(x, y);
        path.lineTo(x + side, y);
        path.lineTo(x + side, y + side);
        path.lineTo(x, y + side);
        path.close();
    }
}
