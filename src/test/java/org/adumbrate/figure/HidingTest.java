package org.adumbrate.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.figure.depth.DepthScale;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.perspective.View;
import org.adumbrate.raster.StoredNumbers;
import org.junit.jupiter.api.Test;

class HidingTest {
    private static final View VIEW = new View(200, new SheetPoint(150, 80), 1.6, 0);
    private static final double PX_PER_MM = 6;
    private static final DepthScale SCALE = new DepthScale(0, 1000);
    private static final Affine<RasterPoint, SheetPoint> TO_SHEET =
            Affine.scaling(Space.RASTER, Space.SHEET, 1 / PX_PER_MM, 1 / PX_PER_MM);

    /** The board stands 8 m away, 10 mm wide and 50 mm high, from (145, 70) to (155, 120). */
    private static final PlacedFigure FIGURE =
            Figures.on(VIEW, Figures.board(-0.2, 0.2), new SheetPoint(150, 120), 0, false);

    private interface Surface {
        double depthAt(double x, double y);
    }

    /** A floor up to the horizon, and before it what a surface says, in sheet mm; 0 stands for nothing. */
    private static DepthMap scene(Surface surface) {
        PixelSize size = new PixelSize((int) (300 * PX_PER_MM), (int) (200 * PX_PER_MM));
        float[] values = new float[Math.toIntExact(size.count())];
        for (int k = 0; k < values.length; k++) {
            SheetPoint seen = TO_SHEET.at(k % size.width() + 0.5, Math.floorDiv(k, size.width()) + 0.5);
            double before = surface.depthAt(seen.x(), seen.y());
            double depth =
                    before > 0 ? before : VIEW.onLevel(seen, 0).map(VIEW::depth).orElse(Double.POSITIVE_INFINITY);
            values[k] = (float) (depth / SCALE.far());
        }
        Affine<RasterPoint, RasterPoint> whole = Affine.scaling(Space.RASTER, Space.RASTER, 1, 1);
        return DepthMap.of(new StoredNumbers(size, values, 0, whole), SCALE, TO_SHEET);
    }

    private static Region<SheetPoint> hidden(Surface surface) {
        return new Hiding(scene(surface), VIEW).before(FIGURE, FIGURE.body(VIEW));
    }

    @Test
    void theFloorHidesNobody() {
        assertThat(hidden((x, y) -> 0).isEmpty()).isTrue();
        PlacedFigure turned = Figures.on(VIEW, Figures.board(-0.5, 0.5), new SheetPoint(150, 120), 50, false);
        assertThat(new Hiding(scene((x, y) -> 0), VIEW)
                        .before(turned, turned.body(VIEW))
                        .isEmpty())
                .isTrue();
    }

    @Test
    void aWallBeforeItHidesAndOneBehindItDoesNot() {
        Region<SheetPoint> body = FIGURE.body(VIEW);
        VisibleFigure behind = VisibleFigure.of(body, List.of(hidden((x, y) -> x < 150 ? 6 : 0)));
        Extent left = behind.area().extent().orElseThrow();
        // the wall's edge, and 0.1 mm for the line along it
        assertThat(left.left()).isCloseTo(150.1, within(0.7 / PX_PER_MM));
        assertThat(left.right()).isCloseTo(155, within(0.02));
        assertThat(VisibleFigure.of(body, List.of(hidden((x, y) -> 9))).area()).isEqualTo(body);
        assertThat(VisibleFigure.of(body, List.of(hidden((x, y) -> 6))).isEmpty())
                .isTrue();
    }

    @Test
    void whatItTouchesDoesNotHideIt() {
        assertThat(hidden((x, y) -> 7.9).isEmpty()).isTrue();
        assertThat(hidden((x, y) -> 7.8).isEmpty()).isFalse();
    }

    @Test
    void noLineIsDrawnAlongWhatHidesIt() {
        VisibleFigure seen = VisibleFigure.of(FIGURE.body(VIEW), List.of(hidden((x, y) -> x < 150 ? 6 : 0)));
        // 5 mm above, 50 at the right, 5 below, less twice the 0.1 mm
        assertThat(seen.outline().length()).isCloseTo(60 - 0.2, within(0.3));
    }

    @Test
    void aSlantingEdgeIsStraight() {
        Region<SheetPoint> hidden = hidden((x, y) -> y > 95 + 0.4 * (x - 150) ? 5 : 0);
        double tilt = Math.hypot(1, 0.4);
        Region<SheetPoint> seen = FIGURE.body(VIEW).minus(hidden);
        int[] along = {0};
        seen.sides((x, y, toX, toY) -> {
            double off = Math.abs(y + 0.1 * tilt - 95 - 0.4 * (x - 150)) / tilt;
            if (y > 75) {
                assertThat(off).isLessThan(0.7 / PX_PER_MM);
                along[0]++;
            }
        });
        assertThat(along[0]).isEqualTo(2);
    }

    /** Seen from below, the edge of the floor it stands on hides its feet. */
    @Test
    void aFloorAboveTheEyeHidesFeet() {
        SheetPoint foot = new SheetPoint(150, 60);
        PlacedFigure above = new PlacedFigure(
                Figures.board(-0.2, 0.2), Spot.on(VIEW, foot, 2.4).orElseThrow(), Stance.upright(2));
        double edge = VIEW.horizonMm() - VIEW.focalMm() * 0.8 / 5;
        Region<SheetPoint> slab =
                new Hiding(scene((x, y) -> y > edge && y < 75 ? 5 : 0), VIEW).before(above, above.body(VIEW));
        Extent seen = above.body(VIEW).minus(slab).extent().orElseThrow();
        assertThat(seen.bottom()).isCloseTo(edge - 0.1, within(0.7 / PX_PER_MM));
    }

    @Test
    void namedRegionsHideWithoutADepthPass() {
        Region<SheetPoint> mask = Region.rectangle(Space.SHEET, 100, 100, 200, 150);
        VisibleFigure seen = VisibleFigure.of(FIGURE.body(VIEW), List.of(mask, Region.empty(Space.SHEET)));
        assertThat(seen.area().extent().orElseThrow().bottom()).isEqualTo(100);
        assertThat(seen.outline().length()).isCloseTo(30 + 10 + 30, within(0.05));
    }
}
