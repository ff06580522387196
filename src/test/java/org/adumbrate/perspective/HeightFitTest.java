package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;

class HeightFitTest {
    private static final double HEIGHT = 1.65;
    private static final View VIEW = new View(260, new SheetPoint(214, 150.5), 4.25, 0);

    private static HeightLine line(double x, double depth, double elevation) {
        return new HeightLine(
                VIEW.project(new ModelPoint(x, depth, elevation)).orElseThrow(),
                VIEW.project(new ModelPoint(x, depth, elevation + HEIGHT)).orElseThrow());
    }

    private static List<HeightLine> lines(double elevation, double... depths) {
        List<HeightLine> lines = new ArrayList<>();
        for (double depth : depths) {
            lines.add(line(lines.size() - 1.5, depth, elevation));
        }
        return lines;
    }

    @SafeVarargs
    private static List<HeightLine> all(List<HeightLine>... floors) {
        List<HeightLine> all = new ArrayList<>();
        for (List<HeightLine> floor : floors) {
            all.addAll(floor);
        }
        return all;
    }

    private static void assertRefused(List<HeightLine> lines, Stated stated, String why) {
        assertThatThrownBy(() -> HeightFit.of(lines, HEIGHT, stated))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(why)
                .satisfies(refusal -> assertThat(refusal.getMessage()).doesNotContain("\n"));
    }

    @Test
    void tellsFloorsBelowAndAboveTheEyeApart() throws Refusal {
        List<HeightLine> lines = all(lines(0, 14, 17, 22), lines(0.15, 14, 19), lines(6, 15, 18, 21));
        FittedHeights fitted = HeightFit.of(lines, HEIGHT, Stated.NOTHING);
        assertThat(fitted.horizonMm()).isCloseTo(150.5, within(1e-6));
        assertThat(fitted.floors()).extracting(FittedFloor::name).containsExactly("floor-1", "floor-2", "floor-3");
        assertThat(fitted.floors().get(0).eyeHeightM()).isCloseTo(4.25, within(1e-7));
        assertThat(fitted.floors().get(1).eyeHeightM()).isCloseTo(4.10, within(1e-7));
        assertThat(fitted.floors().get(2).eyeHeightM()).isCloseTo(-1.75, within(1e-7));
        assertThat(fitted.outliers()).isEmpty();
    }

    @Test
    void namesTheOutliers() throws Refusal {
        HeightLine hidden =
                new HeightLine(new SheetPoint(100, 200), line(0, 16, 0).head());
        FittedHeights fitted = HeightFit.of(all(lines(0, 14, 15, 17, 22), List.of(hidden)), HEIGHT, Stated.NOTHING);
        assertThat(fitted.outliers()).containsExactly(hidden);
        assertThat(fitted.floors().get(0).lines()).hasSize(4);
    }

    @Test
    void twoLinesOnAFloorAreEnoughWhenTheHorizonIsKnown() throws Refusal {
        FittedHeights fitted = HeightFit.of(
                all(lines(0, 14, 16), lines(3.35, 14, 16), lines(6, 15, 19)), HEIGHT, Stated.horizon(150.5));
        assertThat(fitted.horizonMm()).isEqualTo(150.5);
        assertThat(fitted.horizonErrorMm()).isZero();
        assertThat(fitted.floors()).hasSize(3).allSatisfy(floor -> assertThat(floor.lines())
                .hasSize(2));
        assertThat(fitted.floors().get(1).eyeHeightM()).isCloseTo(0.9, within(1e-7));
    }

    @Test
    void statedElevationsTieTheFloorsAndGiveTheirNames() throws Refusal {
        Map<String, Double> elevations = Map.of("yard", 0.0, "upper", 3.35, "loft", 6.5);
        // one line on the upper floor would be no floor by itself
        List<HeightLine> lines = all(lines(0, 14, 17, 22), lines(3.35, 15));
        FittedHeights fitted = HeightFit.of(lines, HEIGHT, Stated.elevations(elevations));
        assertThat(fitted.floors()).extracting(FittedFloor::name).containsExactly("yard", "upper", "loft");
        assertThat(fitted.floor("upper").orElseThrow().lines()).hasSize(1);
        assertThat(fitted.floor("loft").orElseThrow().eyeHeightM()).isCloseTo(4.25 - 6.5, within(1e-6));
        SheetPoint foot = VIEW.project(new ModelPoint(2, 18, 6.5)).orElseThrow();
        SheetPoint head = VIEW.project(new ModelPoint(2, 18, 8.2)).orElseThrow();
        assertThat(fitted.figure(foot, 1.7, fitted.floorAt(foot)).distanceTo(head))
                .isLessThan(1e-5);
    }

    @Test
    void findsAFloorThatIsNotAmongTheStated() throws Refusal {
        List<HeightLine> lines = all(lines(0, 14, 17, 22), lines(3.35, 15, 18, 20), lines(0.75, 14, 16, 19));
        FittedHeights fitted = HeightFit.of(lines, HEIGHT, Stated.elevations(Map.of("yard", 0.0, "upper", 3.35)));
        assertThat(fitted.floors()).extracting(FittedFloor::name).containsExactly("yard", "floor-1", "upper");
        assertThat(fitted.floors().get(1).eyeHeightM()).isCloseTo(3.5, within(1e-6));
    }

    @Test
    void saysThatTheEyeCannotBeToldFromOneFloorOfSeveral() throws Refusal {
        Map<String, Double> elevations = Map.of("yard", 0.0, "upper", 3.35);
        List<HeightLine> lines = lines(0, 14, 17, 22);
        assertRefused(lines, Stated.elevations(elevations), "give the eye height");
        Stated withEye = new Stated(OptionalDouble.empty(), elevations, OptionalDouble.of(4.25));
        FittedHeights fitted = HeightFit.of(lines, HEIGHT, withEye);
        assertThat(fitted.floor("yard").orElseThrow().lines()).hasSize(3);
        assertThat(fitted.horizonMm()).isCloseTo(150.5, within(1e-6));
    }

    @Test
    void saysWhatIsMissing() {
        assertRefused(List.of(), Stated.NOTHING, "no height lines");
        assertRefused(lines(0, 14), Stated.horizon(150.5), "second one on the same floor");
        assertRefused(lines(0, 14, 18), Stated.NOTHING, "give the horizon, or draw at least three");
        assertRefused(lines(0, 14, 18), Stated.horizon(120), "with the horizon at 120.0 mm");
        assertRefused(lines(0, 16, 16.01, 16.02, 15.99), Stated.NOTHING, "at about one depth");
        assertRefused(all(lines(0, 14), lines(1, 19), lines(2.8, 16)), Stated.NOTHING, "no three of 3");
    }

    @Test
    void tellsTheFloorByTheSideOfTheHorizon() throws Refusal {
        FittedHeights fitted =
                HeightFit.of(all(lines(0, 14, 17, 22), lines(0.75, 14, 17), lines(6, 15, 18)), HEIGHT, Stated.NOTHING);
        assertThat(fitted.floorAt(new SheetPoint(100, 120)).name()).isEqualTo("floor-3");
        assertThatThrownBy(() -> fitted.floorAt(new SheetPoint(100, 200)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("floor-1, floor-2")
                .hasMessageContaining("say which");
        FittedFloor yard = fitted.floors().get(0);
        assertThatThrownBy(() -> fitted.figure(new SheetPoint(100, 120), 1.7, yard))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("below the horizon");
    }

    @Test
    void aFloorLevelWithTheEyeTellsTheHorizonButNoSize() throws Refusal {
        FittedHeights fitted = HeightFit.of(lines(4.25, 14, 17, 22, 19), HEIGHT, Stated.NOTHING);
        assertThat(fitted.horizonMm()).isCloseTo(150.5, within(1e-6));
        FittedFloor level = fitted.floors().get(0);
        assertThat(level.eyeHeightM()).isCloseTo(0, within(1e-6));
        assertThatThrownBy(() -> fitted.figure(new SheetPoint(100, 150.5), 1.7, level))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("edge-on");
    }
}
