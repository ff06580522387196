package org.adumbrate.figure.planting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.adumbrate.fault.Refusal;
import org.adumbrate.figure.PlacedFigure;
import org.adumbrate.figure.outline.FigureOutline;
import org.adumbrate.figure.outline.ShippedOutlines;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.perspective.View;
import org.junit.jupiter.api.Test;

class ScatterTest {
    private static final View VIEW = new View(200, new SheetPoint(150, 80), 1.6, 0.2);
    private static final List<FigureOutline> GRASS = List.of(
            ShippedOutlines.named("grass-tuft").orElseThrow(),
            ShippedOutlines.named("grass-tall").orElseThrow());
    private static final Region<SheetPoint> BED = Region.of(
            Space.SHEET,
            List.of(
                    List.of(point(60, 150), point(120, 100), point(150, 100), point(140, 150)),
                    List.of(point(220, 100), point(240, 100), point(260, 120))));
    private static final PlantingRule RULE = new PlantingRule(0.4, OptionalDouble.empty(), 0.25, 7);

    private static SheetPoint point(double x, double y) {
        return new SheetPoint(x, y);
    }

    private static ModelPoint model(PlacedFigure plant) {
        return plant.spot().model().orElseThrow();
    }

    private static double apart(ModelPoint a, ModelPoint b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }

    @Test
    void feetStandInTheRegionAndKeepTheirDistance() throws Refusal {
        List<PlacedFigure> plants = Scatter.plants(GRASS, BED, VIEW, 0, RULE);
        assertThat(plants).hasSizeGreaterThan(60);
        for (int k = 0; k < plants.size(); k++) {
            assertThat(BED.grown(1e-6).contains(plants.get(k).spot().foot())).isTrue();
            for (int n = 0; n < k; n++) {
                assertThat(apart(model(plants.get(k)), model(plants.get(n)))).isGreaterThan(0.4 - 1e-9);
            }
        }
    }

    @Test
    void noPlaceIsLeftBare() throws Refusal {
        List<PlacedFigure> plants = Scatter.plants(GRASS, BED, VIEW, 0, RULE);
        for (double x = 60; x < 260; x += 5) {
            for (double y = 100; y < 150; y += 2) {
                if (BED.contains(point(x, y))) {
                    ModelPoint bare = VIEW.onLevel(point(x, y), 0).orElseThrow();
                    assertThat(plants).as("plants near %s %s", x, y).anyMatch(plant -> apart(model(plant), bare) < 0.8);
                }
            }
        }
    }

    @Test
    void sizesVaryAroundTheNominalOnes() throws Refusal {
        List<PlacedFigure> plants = Scatter.plants(GRASS, BED, VIEW, 0, RULE);
        assertThat(plants).allSatisfy(plant -> {
            double nominal = plant.outline().nominalM().orElseThrow();
            assertThat(plant.stance().statureM()).isBetween(0.75 * nominal, 1.25 * nominal);
            assertThat(plant.stance().turn()).isEqualTo(-0.2);
        });
        assertThat(plants).map(plant -> plant.stance().mirrored()).contains(true, false);
        assertThat(plants).map(PlacedFigure::outline).contains(GRASS.get(0), GRASS.get(1));
        assertThat(plants).isSortedAccordingTo(PlacedFigure.BACK_TO_FRONT);
        PlantingRule told = new PlantingRule(0.4, OptionalDouble.of(0.8), 0, 7);
        assertThat(Scatter.plants(GRASS, BED, VIEW, 0, told))
                .allMatch(plant -> plant.stance().statureM() == 0.8);
    }

    @Test
    void theSeedAloneTellsTheScatter() throws Refusal {
        List<PlacedFigure> once = Scatter.plants(GRASS, BED, VIEW, 0, RULE);
        assertThat(Scatter.plants(GRASS, BED, VIEW, 0, RULE)).isEqualTo(once);
        PlantingRule other = new PlantingRule(0.4, OptionalDouble.empty(), 0.25, 8);
        assertThat(Scatter.plants(GRASS, BED, VIEW, 0, other)).isNotEqualTo(once);
    }

    @Test
    void tooManyAreRefusedAndARegionUpToTheHorizonEnds() {
        PlantingRule dense = new PlantingRule(0.02, OptionalDouble.empty(), 0, 1);
        assertThatThrownBy(() -> Scatter.plants(GRASS, BED, VIEW, 0, dense))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("widen the spacing of 0.02 m");
        Region<SheetPoint> far = Region.rectangle(Space.SHEET, 100, 60, 110, 100);
        PlantingRule wide = new PlantingRule(3, OptionalDouble.of(1), 0, 1);
        assertThat(catching(far, wide))
                .isNotEmpty()
                .allMatch(plant -> plant.spot().mmPerMetre() > 0.39);
    }

    private static List<PlacedFigure> catching(Region<SheetPoint> region, PlantingRule rule) {
        try {
            return Scatter.plants(GRASS, region, VIEW, 0, rule);
        } catch (Refusal e) {
            throw new AssertionError(e);
        }
    }

    /** With the horizon and the eye's height alone, sizes are as they must be. */
    @Test
    void aSupposedViewKeepsSizes() {
        View view = Scatter.supposedView(new SheetSize(300, 400), 80, 1.6);
        assertThat(view.focalMm()).isEqualTo(500);
        double depth = view.depth(view.onLevel(point(20, 120), 0).orElseThrow());
        assertThat(view.scaleAt(depth)).isCloseTo(40 / 1.6, within(1e-9));
    }

    /** The sequence of SplitMix64 for the seed 1234567 as it is commonly published. */
    @Test
    void randomNumbersAreThoseOfSplitMix() {
        SplitMix random = new SplitMix(1_234_567);
        assertThat(Long.toUnsignedString(random.nextLong())).isEqualTo("6457827717110365317");
        assertThat(Long.toUnsignedString(random.nextLong())).isEqualTo("3203168211198807973");
        assertThat(Long.toUnsignedString(random.nextLong())).isEqualTo("9817491932198370423");
        assertThat(Long.toUnsignedString(random.nextLong())).isEqualTo("4593380528125082431");
    }
}
