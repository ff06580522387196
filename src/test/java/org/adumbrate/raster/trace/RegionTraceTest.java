package org.adumbrate.raster.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.junit.jupiter.api.Test;

class RegionTraceTest {
    private static Region<RasterPoint> trace(String... rows) {
        return RegionTrace.trace(
                (x, y) -> rows[y].charAt(x) == '#', new PixelSize(rows[0].length(), rows.length), new Smoothing(1, 0));
    }

    @Test
    void anUprightRectangleComesBackExactly() {
        Region<RasterPoint> traced = RegionTrace.trace(
                (x, y) -> x >= 10 && x < 50 && y >= 20 && y < 90, new PixelSize(60, 100), Smoothing.USUAL);
        Region<RasterPoint> drawn = Region.rectangle(Space.RASTER, 10, 20, 50, 90);
        assertThat(traced.minus(drawn).area() + drawn.minus(traced).area()).isLessThan(1e-9);
        assertThat(traced.outline().segments()).isEqualTo(4);
    }

    @Test
    void whatReachesTheBorderIsClosedThere() {
        Region<RasterPoint> traced = RegionTrace.trace((x, y) -> y >= 5, new PixelSize(40, 30), Smoothing.USUAL);
        assertThat(traced.area()).isCloseTo(40 * 25, within(1e-6));
    }

    @Test
    void holesStayHolesAndIslandsInThemStayIslands() {
        Region<RasterPoint> traced = RegionTrace.trace(
                (x, y) -> {
                    int ring = Math.min(Math.min(x, y), Math.min(59 - x, 59 - y)) / 10;
                    return ring != 1;
                },
                new PixelSize(60, 60),
                Smoothing.USUAL);
        assertThat(traced.pieces()).hasSize(2);
        assertThat(traced.area()).isCloseTo(3600 - (1600 - 400), within(1e-6));
        assertThat(traced.contains(new RasterPoint(15, 30))).isFalse();
        assertThat(traced.contains(new RasterPoint(30, 30))).isTrue();
    }

    @Test
    void pixelsThatMeetAtACornerAreTogether() {
        assertThat(trace("###...", "###...", "###...", "...###", "...###", "...###")
                        .pieces())
                .hasSize(1);
    }

    @Test
    void aRailOnePixelWideIsKept() {
        for (double slope : new double[] {0, 0.2, 0.7}) {
            Region<RasterPoint> rail = RegionTrace.trace(
                    (x, y) -> y == 20 + (int) Math.floor(slope * x), new PixelSize(60, 80), Smoothing.USUAL);
            assertThat(rail.area()).as("slope %s", slope).isBetween(36.0, 66.0);
        }
    }

    @Test
    void specksAreLeftOut() {
        PixelMask speck = (x, y) -> x >= 20 || (x == 5 && y == 5);
        assertThat(RegionTrace.trace(speck, new PixelSize(40, 20), Smoothing.USUAL)
                        .pieces())
                .hasSize(1);
        assertThat(RegionTrace.trace((x, y) -> false, new PixelSize(40, 20), Smoothing.USUAL)
                        .isEmpty())
                .isTrue();
    }

    /** A straight edge at any slope is one line, nowhere farther than 0.7 px from where it was. */
    @Property(tries = 300, seed = "1")
    void aStraightEdgeStaysStraight(
            @ForAll @DoubleRange(min = 0, max = 180) double degrees,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double offset) {
        double a = Math.toRadians(degrees);
        double nx = -Math.sin(a);
        double ny = Math.cos(a);
        PixelSize size = new PixelSize(200, 160);
        Region<RasterPoint> traced =
                RegionTrace.trace((x, y) -> (x + 0.5 - 100) * nx + (y + 0.5 - 80) * ny < offset, size, Smoothing.USUAL);
        int[] onEdge = {0};
        traced.sides((x, y, toX, toY) -> {
            boolean border = x < 1.5 || y < 1.5 || x > 198.5 || y > 158.5;
            double off = Math.abs((x - 100) * nx + (y - 80) * ny - offset);
            assertThat(border || off < 0.7)
                    .as("corner at %s %s is %s off", x, y, off)
                    .isTrue();
            onEdge[0] += border ? 0 : 1;
        });
        assertThat(onEdge[0]).as("corners along the edge").isLessThanOrEqualTo(1);
    }

    /** A polygon filled pixel by pixel comes back: what both cover is more than 98 % of what either covers. */
    @Property(tries = 150, seed = "1")
    void polygonsComeBack(@ForAll @Size(min = 3, max = 9) List<@DoubleRange(min = 60, max = 140) Double> radii) {
        VectorPath.Builder<RasterPoint> path = VectorPath.in(Space.RASTER);
        for (int k = 0; k < radii.size(); k++) {
            double a = 2 * Math.PI * k / radii.size() + 0.3;
            double x = 150 + radii.get(k) * Math.cos(a);
            double y = 150 + radii.get(k) * Math.sin(a);
            if (k == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        path.close();
        Region<RasterPoint> drawn = Region.evenOdd(path.build(), 0.01);
        Region<RasterPoint> traced = RegionTrace.trace(
                (x, y) -> drawn.contains(new RasterPoint(x + 0.5, y + 0.5)), new PixelSize(300, 300), Smoothing.USUAL);
        assertThat(traced.within(drawn).area() / traced.union(drawn).area()).isGreaterThan(0.98);
        assertThat(traced.outline().segments()).isLessThanOrEqualTo(3 * radii.size());
    }

    @Test
    void aCircleHasItsAreaAndFewCorners() {
        Region<RasterPoint> traced = RegionTrace.trace(
                (x, y) -> Math.hypot(x + 0.5 - 200, y + 0.5 - 200) < 150, new PixelSize(400, 400), Smoothing.USUAL);
        assertThat(traced.area()).isCloseTo(Math.PI * 150 * 150, within(150.0));
        assertThat(traced.outline().segments()).isBetween(12, 60);
    }

    /** Whatever the pixels, the result is sound and as large as they are many, but for cut corners. */
    @Property(tries = 60, seed = "1")
    void anyPixelsGiveASoundRegion(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
        Random random = new Random(seed);
        boolean[][] set = new boolean[40][40];
        int count = 0;
        for (boolean[] row : set) {
            for (int x = 0; x < row.length; x++) {
                row[x] = random.nextInt(100) < 70;
                count += row[x] ? 1 : 0;
            }
        }
        Region<RasterPoint> traced =
                RegionTrace.trace((x, y) -> set[y][x], new PixelSize(40, 40), new Smoothing(0.1, 0));
        assertThat(traced.polygons().isValid()).isTrue();
        assertThat(traced.area()).isCloseTo(count, within(0.1 * count));
    }
}
