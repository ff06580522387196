package org.adumbrate.figure.shadow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.figure.depth.DepthScale;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;
import org.adumbrate.raster.StoredNumbers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ground, and a wall 12 m before the eye that faces it, in a depth pass of 16 bits that is worked out here. */
class SurfacesTest {
    private static final SheetSize SHEET = new SheetSize(400, 300);
    private static final View VIEW = new View(260, new SheetPoint(200, 110), 3, 0);
    private static final DepthScale SCALE = new DepthScale(4, 30);
    private static final double WALL = 12;
    private static final SunDirection BEHIND_THE_VIEWER = SunDirection.of(180, 30, 0);

    private static double ground(SheetPoint seen) {
        return VIEW.onLevel(seen, 0).map(VIEW::depth).orElse(Double.POSITIVE_INFINITY);
    }

    private static double groundAndWall(SheetPoint seen) {
        return Math.min(ground(seen), WALL);
    }

    private static DepthMap pass(int width, ToDoubleFunction<SheetPoint> depth) {
        PixelSize size = new PixelSize(width, width * 3 / 4);
        double pixel = SHEET.widthMm() / width;
        float[] values = new float[(int) size.count()];
        for (int k = 0; k < values.length; k++) {
            SheetPoint seen =
                    new SheetPoint(pixel * (k % width + 0.5), pixel * ((k - k % width) / (double) width + 0.5));
            double value = (depth.applyAsDouble(seen) - SCALE.near()) / (SCALE.far() - SCALE.near());
            values[k] = Math.round(Math.max(0, Math.min(1, value)) * 65535) / 65535f;
        }
        StoredNumbers numbers =
                new StoredNumbers(size, values, 1 / 65535.0, Affine.identity(Space.RASTER, Space.RASTER));
        return DepthMap.of(numbers, SCALE, Affine.scaling(Space.RASTER, Space.SHEET, pixel, pixel));
    }

    private static FigureShadow shadow(int width, SunDirection sun, Receiver receiver, StandingSolid... figures) {
        PixelSize canvas = new PixelSize(width, width * 3 / 4);
        return FigureShadow.of(
                VIEW, sun, Canvas.whole(SHEET, canvas), List.of(new Casting(receiver, List.of(figures))));
    }

    private static float at(FigureShadow shadow, ModelPoint place) {
        SheetPoint seen = VIEW.project(place).orElseThrow();
        double perMm = shadow.size().width() / SHEET.widthMm();
        float[] light = new float[1];
        shadow.read((int) (seen.x() * perMm), (int) (seen.y() * perMm), 1, 1, light);
        return light[0];
    }

    /** A board 2 m high, 2 m before the wall, the sun 30 degrees high: the shadow climbs to 2 - 2 tan 30 = 0.845 m. */
    @Test
    void aShadowClimbsTheWall() {
        Receiver seen = new Receiver.Surfaces(pass(800, SurfacesTest::groundAndWall));
        FigureShadow shadow = shadow(1600, BEHIND_THE_VIEWER, seen, Bodies.at(0, 10, 0, Bodies.board(2, 1)));
        double top = 2 - 2 * Math.tan(Math.toRadians(30));
        assertThat(at(shadow, new ModelPoint(0.3, WALL, top - 0.05))).isEqualTo(0);
        assertThat(at(shadow, new ModelPoint(0.3, WALL, top + 0.05))).isEqualTo(1);
        assertThat(at(shadow, new ModelPoint(0.3, WALL, 0.1))).isEqualTo(0);
        assertThat(at(shadow, new ModelPoint(0.3, 11, 0))).isEqualTo(0);
        assertThat(at(shadow, new ModelPoint(1.1, 11, 0))).isEqualTo(1);
        assertThat(at(shadow, new ModelPoint(0.3, 9.5, 0))).isEqualTo(1);
    }

    /** With the sun before the viewer the wall turns away from it, and what stands behind the wall casts nothing on it. */
    @Test
    void whatTurnsAwayFromTheSunIsLeftAlone() {
        Receiver seen = new Receiver.Surfaces(pass(800, SurfacesTest::groundAndWall));
        SunDirection before = SunDirection.of(0, 30, 0);
        FigureShadow shadow = shadow(800, before, seen, Bodies.at(0, 13, 0, Bodies.board(3, 1)));
        assertThat(at(shadow, new ModelPoint(0.3, WALL, 1))).isEqualTo(1);
        assertThat(at(shadow, new ModelPoint(0.3, 11, 0))).isEqualTo(0);
    }

    @ParameterizedTest
    @ValueSource(ints = {200, 400, 900})
    void onGroundAloneItIsAsOnAFloor(int width) {
        StandingSolid figure = Bodies.at(0.2, 9, 0, Bodies.post(1.8, 0.25, 0.15));
        SunDirection sun = SunDirection.of(220, 35, 0);
        FigureShadow onFloor = shadow(width, sun, new Receiver.Floor(0, Optional.empty()), figure);
        FigureShadow onGround = shadow(width, sun, new Receiver.Surfaces(pass(400, SurfacesTest::ground)), figure);
        float[] floor = new float[(int) onFloor.size().count()];
        float[] ground = new float[floor.length];
        onFloor.read(0, 0, width, onFloor.size().height(), floor);
        onGround.read(0, 0, width, onFloor.size().height(), ground);
        double off = 0;
        double shade = 0;
        for (int k = 0; k < floor.length; k++) {
            off += Math.abs(floor[k] - ground[k]);
            shade += 1 - floor[k];
        }
        assertThat(shade).isGreaterThan(width / 20.0);
        assertThat(off / shade).isLessThan(width < 400 ? 0.1 : 0.01);
    }

    /** The wall's foot lies within a pixel of the depth pass; where it is drawn, shadows end at the line. */
    @Test
    void shadowsEndAtADrawnEdge() {
        // A wall that ends at x = 0.313 before open background: the shadow on it is seen to that edge and no farther.
        ToDoubleFunction<SheetPoint> half = seen -> VIEW.at(seen, WALL).x() < 0.313 ? WALL : Double.POSITIVE_INFINITY;
        double edge = VIEW.project(new ModelPoint(0.313, WALL, 0)).orElseThrow().x();
        VectorPath.Builder<SheetPoint> line = VectorPath.in(Space.SHEET);
        line.moveTo(edge, 0);
        line.lineTo(edge, 300);
        StandingSolid board = Bodies.at(0, 10, 0, Bodies.board(3, 3));
        DepthMap depth = pass(100, half);
        float[] drawn = new float[1600];
        float[] undrawn = new float[1600];
        int row = 1200 * 150 / 300;
        Receiver withLine = new Receiver.Surfaces(depth, List.of(line.build()));
        shadow(1600, BEHIND_THE_VIEWER, withLine, board).read(0, row, 1600, 1, drawn);
        shadow(1600, BEHIND_THE_VIEWER, new Receiver.Surfaces(depth), board).read(0, row, 1600, 1, undrawn);
        assertThat(bound(drawn)).isCloseTo(edge * 4, offset(0.3));
        assertThat(bound(undrawn)).isCloseTo(Math.round(edge / 4) * 16.0, offset(0.01));
    }

    /** Where a dark stretch from the middle of the row ends, by how much light the pixels after it have. */
    private static double bound(float[] row) {
        double end = 800;
        for (int x = 800; x < row.length; x++) {
            end += 1 - row[x];
        }
        return end;
    }

    @Test
    void nothingSeenIsLight() {
        Receiver nothing = new Receiver.Surfaces(pass(100, seen -> Double.POSITIVE_INFINITY));
        FigureShadow shadow = shadow(100, BEHIND_THE_VIEWER, nothing, Bodies.at(0, 10, 0, Bodies.board(2, 1)));
        float[] light = new float[7500];
        shadow.read(0, 0, 100, 75, light);
        assertThat(light).containsOnly(1f);
    }
}
