package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;

class FloorCheckTest {
    private static final View VIEW = new View(260, new SheetPoint(214, 150.5), 4.25, 0);
    private static final Map<String, Double> TRUE = Map.of("yard", 0.0, "mezzanine", 2.1, "upper", 3.35);

    private static List<HeightLine> lines() {
        List<HeightLine> lines = new ArrayList<>();
        lines.addAll(HeightLinesOnFloors.lines(VIEW, 0, 14, 16, 19, 22));
        lines.addAll(HeightLinesOnFloors.lines(VIEW, 2.1, 14.5, 17, 20));
        lines.addAll(HeightLinesOnFloors.lines(VIEW, 3.35, 15, 18, 21));
        return lines;
    }

    private static List<Contradiction> check(double heightM, Map<String, Double> elevations, OptionalDouble eye)
            throws Refusal {
        FittedHeights alone = HeightFit.of(lines(), heightM, Stated.NOTHING);
        return FloorCheck.of(alone, elevations, eye, Optional.empty());
    }

    @Test
    void whatAgreesIsNotTold() throws Refusal {
        assertThat(check(1.65, TRUE, OptionalDouble.empty())).isEmpty();
        assertThat(check(1.65, TRUE, OptionalDouble.of(4.25))).isEmpty();
        assertThat(check(1.65, Map.of(), OptionalDouble.empty())).isEmpty();
    }

    @Test
    void oneFloorStatedAMetreOffIsToldWithBothFigures() throws Refusal {
        Map<String, Double> wrong = Map.of("yard", 0.0, "mezzanine", 2.1, "upper", 4.35);
        assertThat(check(1.65, wrong, OptionalDouble.empty())).singleElement().satisfies(told -> {
            assertThat(told.key()).isEqualTo("floors.upper");
            assertThat(told.text()).contains("says 4.35 m").contains("at 3.35 m");
            assertThat(told.at()).hasSize(3);
            assertThat(told.isSure()).isTrue();
        });
    }

    @Test
    void theFloorsOrderTellsWhichIsMeant() throws Refusal {
        Map<String, Double> wrong = Map.of("yard", -1.0, "mezzanine", 2.1, "upper", 3.35, "landing", 0.5, "roof", 6.0);
        assertThat(check(1.65, wrong, OptionalDouble.empty())).singleElement().satisfies(told -> assertThat(told.key())
                .isIn("floors.yard", "floors.landing"));
    }

    @Test
    void aFloorOfLinesThatIsNotStatedIsTold() throws Refusal {
        assertThat(check(1.65, Map.of("yard", 0.0, "upper", 3.35), OptionalDouble.empty()))
                .singleElement()
                .satisfies(told -> {
                    assertThat(told.text()).contains("stand at 2.10 m").contains("no floor is stated");
                    assertThat(told.isSure()).isFalse();
                });
    }

    @Test
    void twoFloorsOfWhichOneIsWrongAreToldByTheirDistances() throws Refusal {
        List<HeightLine> lines = new ArrayList<>(HeightLinesOnFloors.lines(VIEW, 0, 14, 16, 19));
        lines.addAll(HeightLinesOnFloors.lines(VIEW, 3.35, 15, 18, 21));
        FittedHeights alone = HeightFit.of(lines, 1.65, Stated.NOTHING);
        Map<String, Double> wrong = Map.of("yard", 0.0, "upper", 4.35);
        assertThat(FloorCheck.of(alone, wrong, OptionalDouble.empty(), Optional.empty()))
                .singleElement()
                .satisfies(told -> assertThat(told.text())
                        .contains("upper at 4.35 m")
                        .contains("3.35 m (")
                        .contains("heights.height"));
    }

    @Test
    void aWrongHeightOfTheLinesIsToldAsThat() throws Refusal {
        assertThat(check(1.85, TRUE, OptionalDouble.of(4.25))).singleElement().satisfies(told -> {
            assertThat(told.key()).isEqualTo("heights.height");
            assertThat(told.text()).contains("says 1.85 m").contains("1.65 m tall");
        });
    }
}
