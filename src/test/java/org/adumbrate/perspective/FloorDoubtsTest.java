package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;

class FloorDoubtsTest {
    private static final View VIEW = new View(260, new SheetPoint(214, 150.5), 4.25, 0);

    private static FittedFloor floor(String name, double elevation, double... depths) {
        return new FittedFloor(
                name, 4.25 - elevation, 0.01, HeightLinesOnFloors.lines(VIEW, elevation, depths), 0, List.of());
    }

    private static List<FloorDoubts.Doubt> doubts(FittedFloor... floors) {
        return FloorDoubts.of(new FittedHeights(1.65, 150.5, 0, List.of(floors)));
    }

    @Test
    void storeysAndStepsAreNoneToDoubt() {
        assertThat(doubts(floor("a", 0, 14, 16, 19), floor("terrace", 0.75, 14, 16)))
                .isEmpty();
        assertThat(doubts(floor("a", 0, 14, 16), floor("b", 0.15, 14, 16), floor("c", 3.35, 14, 16)))
                .isEmpty();
        assertThat(doubts(floor("a", 0, 14, 16))).isEmpty();
        List<FittedFloor> splitLevels = new ArrayList<>();
        for (int k = 0; k < 4; k++) {
            splitLevels.add(floor("level-" + k, 1.4 * k, 14, 16, 19));
        }
        assertThat(doubts(splitLevels.toArray(FittedFloor[]::new))).isEmpty();
    }

    @Test
    void aFloorThatTwoLinesMakeBetweenTwoStoreysIsDoubted() {
        assertThat(doubts(floor("a", 0, 14, 16, 19), floor("b", 0.8, 15, 15.2), floor("c", 3.35, 14, 16, 19)))
                .singleElement()
                .satisfies(doubt -> {
                    assertThat(doubt.floor().name()).isEqualTo("b");
                    assertThat(doubt.text()).contains("0.80 m above a").contains("made by the lines at (");
                    assertThat(doubt.at()).hasSize(2);
                });
    }

    @Test
    void aFloorFarFromAllOthersIsDoubted() {
        assertThat(doubts(floor("a", -9.6, 14, 16, 19), floor("b", 0, 14, 16, 19, 21)))
                .extracting(doubt -> doubt.floor().name())
                .containsExactly("a");
    }
}
