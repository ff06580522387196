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
    void aMapMovesItsExtentToo() {
        Region<SheetPoint> region = square(1, 2, 3);
        assertThat(region.extent()).contains(new Extent(1, 2, 4, 5));
        Region<SheetPoint> moved =
                region.transform(Affine.scalingThenShift(Space.SHEET, Space.SHEET, 2, 2, 100, 0));
        assertThat(moved.extent()).contains(new Extent(102, 4, 108, 10));
        assertThat(moved.within(square(101, 3, 20)).area()).isEqualTo(36);
    }

    @Property(tries = 200)
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
