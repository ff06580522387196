package org.adumbrate.figure.shadow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.perspective.SunDirection;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against closed forms: the sun stands over the model's +Y unless it says otherwise. */
class SunSilhouetteTest {
    private static double light(StandingSolid figure, SunDirection sun, double x, double y, double z) {
        SunFrame frame = SunFrame.of(sun);
        SunView.Place foot = SunView.of(figure.foot(), frame);
        SunView.Place place = SunView.of(new ModelPoint(x, y, z), frame);
        SolarDisc disc = new SolarDisc();
        disc.clear();
        SunSilhouette.of(figure, frame)
                .hide(place.across - foot.across, place.up - foot.up, place.toward - foot.toward, disc, 0, 1);
        return disc.shown();
    }

    /** On level ground a height h casts a shadow of h / tan(altitude): half of the sun is hidden there. */
    @ParameterizedTest
    @CsvSource({"5, 11.4301", "20, 2.7475", "35, 1.4281", "50, 0.8391", "65, 0.4663", "80, 0.1763"})
    void aShadowIsAsLongAsTheSunIsLow(double altitude, double length) {
        SunDirection sun = SunDirection.of(0, altitude, 0);
        assertThat(light(Bodies.at(3, 7, 0, Bodies.board(1, 2)), sun, 3, 7 - length, 0))
                .isCloseTo(0.5, offset(0.02));
    }

    /** All but on the horizon, and all but overhead. */
    @ParameterizedTest
    @ValueSource(doubles = {0.6, 1, 2, 88, 89})
    void aShadowIsAsLongWhereverTheSunStands(double altitude) {
        SunDirection sun = SunDirection.of(0, altitude, 0);
        double length = 2 / Math.tan(Math.toRadians(altitude));
        StandingSolid board = Bodies.at(0, 0, 0, Bodies.board(2, 40));
        assertThat(light(board, sun, 0, -length, 0)).isCloseTo(0.5, offset(0.02));
        assertThat(light(board, sun, 0, -length * 0.3 - 2e-4, 0)).isLessThan(0.02);
    }

    /** Along the sun: light across the shadow of a level edge 3 m from it, by the circular segment's formula. */
    @Property(tries = 60, seed = "1")
    void theShadowOfALevelEdgeFadesAsTheDiscDoes(
            @ForAll @DoubleRange(min = -1.2, max = 1.2) double s,
            @ForAll @DoubleRange(min = 10, max = 80) double altitude) {
        SunDirection sun = SunDirection.of(0, altitude, 0);
        double a = Math.toRadians(altitude);
        double height = 3 * Math.sin(a);
        double beyond = s * 3 * SolarDisc.RADIUS / Math.sin(a);
        double light = light(Bodies.at(0, 0, 0, Bodies.board(height, 4)), sun, 0, -3 * Math.cos(a) - beyond, 0);
        assertThat(light).isCloseTo(SolarDiscTest.penumbra(s), offset(0.015));
    }

    /** Across the sun: the bound of a post, 3 m from it, seen from a place off to the side. */
    @Property(tries = 60, seed = "1")
    void theShadowOfAnUprightEdgeFadesAsTheDiscDoes(
            @ForAll @DoubleRange(min = -1.2, max = 1.2) double s,
            @ForAll @DoubleRange(min = 10, max = 80) double altitude) {
        SunDirection sun = SunDirection.of(0, altitude, 0);
        double a = Math.toRadians(altitude);
        StandingSolid post = Bodies.at(0, 0, 0, Bodies.post(8, 0.4, 0.1));
        double x = 0.4 + s * 3 * SolarDisc.RADIUS;
        assertThat(light(post, sun, x, -3 * Math.cos(a), 0)).isCloseTo(SolarDiscTest.penumbra(s), offset(0.015));
    }

    /**
     * The strip behind an elliptical post with semi-axes p and q is as wide as the ellipse is across the sun:
     * sqrt(p² sin² phi + q² cos² phi), with phi from the p axis.
     */
    @ParameterizedTest
    @CsvSource({"0, 0.1265", "45, 0.2010", "90, 0.2545"})
    void anEllipticalFootprintCastsAStripOfItsWidth(double phi, double halfWidth) {
        StandingSolid post = new StandingSolid(
                new ModelPoint(0, 0, 0), Math.toRadians(90 - phi), false, Bodies.post(3, 0.2545, 0.1265));
        SunDirection sun = SunDirection.of(0, 40, 0);
        for (int side = -1; side <= 1; side += 2) {
            double edge = side * halfWidth;
            assertThat(light(post, sun, edge, -1.5, 0)).isCloseTo(0.5, offset(0.02));
            assertThat(light(post, sun, edge * 0.9, -1.5, 0)).isEqualTo(0);
            assertThat(light(post, sun, edge * 1.1, -1.5, 0)).isEqualTo(1);
        }
    }

    /** A bar of width b has an umbra only up to 107.5 b behind it. */
    @Property(tries = 20, seed = "1")
    void aThinPostHasAnUmbraOnlyNearBy(@ForAll @DoubleRange(min = 5, max = 20) double millimetres) {
        double width = millimetres / 1000;
        SunDirection sun = SunDirection.of(0, 30, 0);
        StandingSolid post = Bodies.at(0, 0, 0, Bodies.post(5, width / 2, width / 2));
        double umbra = 107.5 * width * Math.cos(Math.toRadians(30));
        assertThat(light(post, sun, 0, -0.9 * umbra, 0)).isLessThan(0.01);
        assertThat(light(post, sun, 0, -1.2 * umbra, 0)).isBetween(0.05, 0.3);
    }

    /** Straight under a slab of several discs no light comes through the joints, and in front of a body it is bright. */
    @Property(tries = 40, seed = "1")
    void slicesHaveNoGaps(
            @ForAll @DoubleRange(min = 2, max = 88) double altitude,
            @ForAll @DoubleRange(min = 0.02, max = 1.7) double h) {
        double thick = 1.75 / 160;
        List<SliceSolid.Disc> discs = java.util.stream.IntStream.range(0, 160)
                .mapToObj(k -> new SliceSolid.Disc(k * thick, (k + 1) * thick, 0, 0.2, 0.1))
                .toList();
        StandingSolid body = Bodies.at(0, 0, 0, new SliceSolid(1.75, discs));
        SunDirection sun = SunDirection.of(0, altitude, 0);
        double behind = h / Math.tan(Math.toRadians(altitude));
        if (behind > 0.12 && behind < 15) {
            assertThat(light(body, sun, 0, -behind, 0)).isLessThan(0.02);
        }
        assertThat(light(body, sun, 0, 0.2, 0)).isEqualTo(1);
        assertThat(light(body, sun, 0, 0.2, 1)).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.5, 2})
    void theQuickAnswerNeverContradictsTheExactOne(double extent) {
        SunDirection sun = SunDirection.of(30, 35, 0);
        SunFrame frame = SunFrame.of(sun);
        SunSilhouette post = SunSilhouette.of(Bodies.at(0, 0, 0, Bodies.post(1.8, 0.25, 0.15)), frame);
        SolarDisc disc = new SolarDisc();
        for (int i = -20; i <= 20; i++) {
            for (int k = -20; k <= 40; k++) {
                double across = i * extent / 20;
                double up = k * extent / 20;
                SunSilhouette.Effect effect = post.effect(across, up, -2, extent / 10, extent / 10);
                disc.clear();
                post.hide(across + extent / 10, up - extent / 10, -2, disc, 0, 1);
                assertThat(disc.shown())
                        .isBetween(
                                effect == SunSilhouette.Effect.NONE ? 1.0 : 0.0,
                                effect == SunSilhouette.Effect.ALL ? 0.0 : 1.0);
            }
        }
    }
}
