package org.adumbrate.figure.shadow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Tiling;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;
import org.adumbrate.raster.Halt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureShadowTest {
    private static final SheetSize SHEET = new SheetSize(400, 300);
    private static final PixelSize CANVAS = new PixelSize(200, 150);
    private static final View VIEW = new View(260, new SheetPoint(200, 110), 3, 0.1);
    private static final Receiver.Floor GROUND = new Receiver.Floor(0, Optional.empty());

    private static final List<StandingSolid> CROWD = crowd();
    private static final FigureShadow EVENING = shadow(SunDirection.of(200, 25, 0), GROUND, CROWD);
    private static final float[] WHOLE_EVENING = all(EVENING);

    private static FigureShadow shadow(SunDirection sun, Receiver receiver, List<StandingSolid> figures) {
        return FigureShadow.of(VIEW, sun, Canvas.whole(SHEET, CANVAS), List.of(new Casting(receiver, figures)));
    }

    private static float[] all(FigureShadow shadow) {
        float[] light = new float[(int) shadow.size().count()];
        shadow.read(0, 0, shadow.size().width(), shadow.size().height(), light);
        return light;
    }

    private static SliceSolid person() {
        Region<SheetPoint> head = Region.rectangle(Space.SHEET, -8, -175, 12, -150);
        Region<SheetPoint> body = Region.rectangle(Space.SHEET, -25, -150, 20, -80);
        Region<SheetPoint> legs =
                Region.rectangle(Space.SHEET, -20, -80, -4, 0).union(Region.rectangle(Space.SHEET, 4, -80, 18, 0));
        return SliceSolid.of(head.union(body).union(legs), 175, 1.75);
    }

    /**
     * A view with the horizon at y 600 of a sheet of 1600 x 1600 mm, the eye 1.6 m above the ground: posts and the tips of their
     * shadows by the classical construction, foot and vanishing point of the shadows, head and vanishing point of the rays.
     */
    @ParameterizedTest
    @CsvSource({
        "-1, 8, 3, -90, 40, 1121.907597, 800",
        "1.5, 6, 2.5, 150, 35, 768.633520, 775.978280",
        "1, 10, 1.8, 25, 20, 602.453274, 889.965823"
    })
    void theTipLiesWhereTheConstructionPutsIt(
            double x, double y, double height, double around, double altitude, double tipX, double tipY) {
        View view = new View(1000, new SheetPoint(800, 600), 1.6, 0);
        // The board stands across the sun, so that its upper bound casts the tip.
        double turn = Math.toRadians(around + 180) * -1;
        StandingSolid board = new StandingSolid(new ModelPoint(x, y, 0), turn, false, Bodies.board(height, 0.2));
        FigureShadow shadow = FigureShadow.of(
                view,
                SunDirection.of(around, altitude, 0),
                Canvas.whole(new SheetSize(1600, 1600), new PixelSize(16000, 16000)),
                List.of(new Casting(GROUND, List.of(board))));
        float[] tip = new float[1];
        shadow.read((int) (tipX * 10), (int) (tipY * 10), 1, 1, tip);
        assertThat(tip[0]).isCloseTo(0.5f, offset(0.1f));
    }

    @Property(tries = 40, seed = "1")
    void anyPartOfThePassIsThePass(
            @ForAll @IntRange(max = 198) int left,
            @ForAll @IntRange(max = 148) int top,
            @ForAll @IntRange(min = 1, max = 40) int width,
            @ForAll @IntRange(min = 1, max = 40) int height) {
        int columns = Math.min(width, 200 - left);
        int rows = Math.min(height, 150 - top);
        float[] part = new float[columns * rows];
        EVENING.read(left, top, columns, rows, part);
        for (int k = 0; k < part.length; k++) {
            assertThat(part[k]).isEqualTo(WHOLE_EVENING[(top + k / columns) * 200 + left + k % columns]);
        }
    }

    private static List<StandingSolid> crowd() {
        List<StandingSolid> figures = new ArrayList<>();
        for (int k = 0; k < 6; k++) {
            figures.add(new StandingSolid(new ModelPoint(-3 + k, 9 + k % 3, 0), k, k % 2 == 0, person()));
        }
        return figures;
    }

    @Property(tries = 10, seed = "1")
    void moreFiguresNeverMakeItLighter(
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth,
            @ForAll @DoubleRange(min = 1, max = 90) double altitude) {
        SunDirection sun = SunDirection.of(azimuth, altitude, 0);
        float[] few = all(shadow(sun, GROUND, CROWD.subList(0, 2)));
        float[] many = all(shadow(sun, GROUND, CROWD.subList(0, 4)));
        for (int k = 0; k < few.length; k++) {
            // A pixel in the penumbra of one more figure may be looked at in other places.
            assertThat(many[k]).isBetween(0f, few[k] + 0.02f);
            assertThat(few[k]).isLessThanOrEqualTo(1f);
        }
    }

    /** Where a pixel's middle lies well in the shadow or well out of it, no bound may have passed it over. */
    @Property(tries = 25, seed = "1")
    void boundsLoseNothing(
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth,
            @ForAll @DoubleRange(min = 0.5, max = 90) double altitude) {
        SunDirection sun = SunDirection.of(azimuth, altitude, 0);
        StandingSolid figure = CROWD.get(2);
        float[] light = all(shadow(sun, GROUND, List.of(figure)));
        SunFrame frame = SunFrame.of(sun);
        SunSilhouette silhouette = SunSilhouette.of(figure, frame);
        SunView.Place foot = SunView.of(figure.foot(), frame);
        SolarDisc disc = new SolarDisc();
        for (int k = 0; k < light.length; k++) {
            SheetPoint seen = new SheetPoint(2 * (k % 200 + 0.5), 2 * ((k - k % 200) / 200.0 + 0.5));
            if (VIEW.onLevel(seen, 0).isPresent()) {
                SunView.Place place = SunView.of(VIEW.onLevel(seen, 0).get(), frame);
                disc.clear();
                silhouette.hide(place.across - foot.across, place.up - foot.up, place.toward - foot.toward, disc, 0, 1);
                if (disc.shown() < 0.2) {
                    assertThat(light[k]).as("pixel %d", k).isLessThan(1f);
                }
            }
        }
    }

    @Test
    void aFullTurnChangesNothing() {
        SunDirection sun = SunDirection.of(130, 40, 0);
        float[] once =
                all(shadow(sun, GROUND, List.of(new StandingSolid(new ModelPoint(0, 9, 0), 0.4, false, person()))));
        float[] again = all(shadow(
                sun, GROUND, List.of(new StandingSolid(new ModelPoint(0, 9, 0), 0.4 + 2 * Math.PI, false, person()))));
        assertThat(again).containsExactly(once, offset(0.002f));
        assertThat(once).contains(0f);
    }

    /** A mirrored figure under a mirrored sun in a mirrored view. */
    @Test
    void aMirroredSheetIsTheMirrorImage() {
        View straight = new View(260, new SheetPoint(200, 110), 3, 0);
        float[] one = all(FigureShadow.of(
                straight,
                SunDirection.of(160, 40, 0),
                Canvas.whole(SHEET, CANVAS),
                List.of(new Casting(
                        GROUND, List.of(new StandingSolid(new ModelPoint(0.7, 9, 0), 0.5, false, person()))))));
        float[] other = all(FigureShadow.of(
                straight,
                SunDirection.of(-160, 40, 0),
                Canvas.whole(SHEET, CANVAS),
                List.of(new Casting(
                        GROUND, List.of(new StandingSolid(new ModelPoint(-0.7, 9, 0), -0.5, true, person()))))));
        double off = 0;
        for (int k = 0; k < one.length; k++) {
            off += Math.abs(one[k] - other[k / 200 * 200 + 199 - k % 200]);
        }
        // Places in a pixel are not mirrored, and pixels are as large as hands here.
        assertThat(off / all(one)).isLessThan(0.03);
    }

    private static double all(float[] light) {
        double shade = 0;
        for (float value : light) {
            shade += 1 - value;
        }
        return shade;
    }

    @Test
    void aFloorEndsWhereItsOutlineDoes() {
        SunDirection sun = SunDirection.of(200, 25, 0);
        Region<SheetPoint> part = Region.rectangle(Space.SHEET, 0, 0, 201, 300);
        float[] whole = WHOLE_EVENING;
        float[] half = all(shadow(sun, new Receiver.Floor(0, Optional.of(part)), CROWD));
        for (int k = 0; k < whole.length; k++) {
            if (k % 200 < 99) {
                assertThat(half[k]).isEqualTo(whole[k]);
            } else if (k % 200 > 101) {
                assertThat(half[k]).isEqualTo(1f);
            }
        }
        assertThat(half).contains(0f);
        assertThat(whole).isNotEqualTo(half);
    }

    @Test
    void thereAreNoShadowsAtNight() {
        assertThat(all(shadow(SunDirection.of(200, -3, 0), GROUND, CROWD))).containsOnly(1f);
        assertThat(all(shadow(SunDirection.of(200, 0, 0), GROUND, CROWD))).containsOnly(1f);
    }

    @Test
    void aFloorAboveTheEyeShowsNoShadows() {
        StandingSolid figure = Bodies.at(0, 9, 4, person());
        Receiver.Floor loft = new Receiver.Floor(4, Optional.empty());
        assertThat(all(shadow(SunDirection.of(200, 30, 0), loft, List.of(figure))))
                .containsOnly(1f);
        Receiver.Floor level = new Receiver.Floor(3, Optional.empty());
        assertThat(all(shadow(SunDirection.of(200, 30, 0), level, List.of(figure))))
                .containsOnly(1f);
    }

    /** With the sun before the viewer shadows come toward the eye and pass below it. */
    @Test
    void aShadowThatPassesBelowTheEyeIsCutThere() {
        StandingSolid tall = Bodies.at(0, 6, 0, Bodies.post(12, 0.3, 0.2));
        float[] light = all(shadow(SunDirection.of(5, 20, 0), GROUND, List.of(tall)));
        assertThat(light[149 * 200 + 100]).isBetween(0f, 1f);
        assertThat(all(light)).isGreaterThan(50);
    }

    /** Shadows that do not reach a window are left out of it, and change nothing in it. */
    @Test
    void aWindowIsTheCropOfTheWhole() {
        for (int width : new int[] {90, 200, 430}) {
            Canvas whole = Canvas.whole(SHEET, new PixelSize(width, width * 3 / 4));
            SunlitFigures lit =
                    SunlitFigures.of(VIEW, SunDirection.of(200, 25, 0), List.of(new Casting(GROUND, CROWD)));
            float[] all = all(lit.on(whole));
            for (int side : new int[] {17, 64, 250}) {
                for (PixelBox box : Tiling.of(whole.whole(), side)) {
                    float[] light = new float[(int) box.size().count()];
                    lit.on(whole.window(box)).read(box.left(), box.top(), box.width(), box.height(), light);
                    for (int k = 0; k < light.length; k++) {
                        int at = (box.top() + k / box.width()) * width + box.left() + k % box.width();
                        if (light[k] != all[at]) {
                            throw new AssertionError(box + ", pixel " + k + ": " + light[k] + " for " + all[at]);
                        }
                    }
                }
            }
        }
    }

    @Test
    void figuresThatAreReadyAlreadyCastAsThoseThatAreMadeReady() throws IOException {
        SunDirection sun = SunDirection.of(200, 25, 0);
        Canvas whole = Canvas.whole(SHEET, CANVAS);
        List<StandingSolid> fewer = CROWD.subList(1, CROWD.size());
        SunlitFigures before = SunlitFigures.of(VIEW, sun, List.of(new Casting(GROUND, CROWD)));
        float[] again = all(before.with(sun, List.of(new Casting(GROUND, fewer)), Halt.NEVER)
                .on(whole));
        assertThat(again).isEqualTo(all(shadow(sun, GROUND, fewer)));
        assertThat(again).isNotEqualTo(WHOLE_EVENING);
    }

    @Test
    void figuresInAnotherSunCastAsThoseThatStoodInNone() throws IOException {
        SunDirection noon = SunDirection.of(180, 60, 0);
        Canvas whole = Canvas.whole(SHEET, CANVAS);
        List<Casting> castings = List.of(new Casting(GROUND, CROWD));
        SunlitFigures evening = SunlitFigures.of(VIEW, SunDirection.of(200, 25, 0), castings);
        assertThat(all(evening.with(noon, castings, Halt.NEVER).on(whole))).isEqualTo(all(shadow(noon, GROUND, CROWD)));
        assertThat(evening.with(SunDirection.of(180, -5, 0), castings, Halt.NEVER)
                        .with(noon, castings, Halt.NEVER)
                        .on(whole))
                .satisfies(light -> assertThat(all(light)).isEqualTo(all(shadow(noon, GROUND, CROWD))));
    }
}
