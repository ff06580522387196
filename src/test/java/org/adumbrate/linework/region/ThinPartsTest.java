package org.adumbrate.linework.region;

import static org.adumbrate.linework.region.Drawn.overlap;
import static org.adumbrate.linework.region.Drawn.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.junit.jupiter.api.Test;

class ThinPartsTest {
    @Test
    void aPaneIsThickenedEvenlyOnBothSides() {
        Region<SheetPoint> thick = ThinParts.thickened(rectangle(50, 10, 50.1, 60), 0.5);
        assertThat(thick.contains(new SheetPoint(49.81, 30))).isTrue();
        assertThat(thick.contains(new SheetPoint(50.29, 30))).isTrue();
        assertThat(thick.contains(new SheetPoint(49.7, 30))).isFalse();
        assertThat(thick.area() / 50).isBetween(0.5, 0.53);
        // as thick as asked all along: what a disc of that size cannot sweep are corners
        assertThat(thick.grown(-0.24).isEmpty()).isFalse();
    }

    @Test
    void aPaneBetweenWallsIsThickenedAndTheWallsAreNot() {
        Region<SheetPoint> walls = rectangle(10, 10, 15, 30).union(rectangle(10, 50, 15, 70));
        Region<SheetPoint> cut = walls.union(rectangle(12, 30, 12.2, 50));
        Region<SheetPoint> thick = ThinParts.thickened(cut, 0.6);
        assertThat(thick.within(rectangle(5, 31, 20, 49)).area()).isCloseTo(0.6 * 18, within(0.1));
        assertThat(overlap(thick.minus(rectangle(5, 30, 20, 50)), walls)).isGreaterThan(0.9999);
    }

    @Test
    void aTaperReachesTheMinimumEverywhere() {
        Region<SheetPoint> wedge = Region.of(
                Space.SHEET,
                List.of(List.of(
                        new SheetPoint(10, 10),
                        new SheetPoint(60, 9.95),
                        new SheetPoint(60, 10.45),
                        new SheetPoint(10, 10.1))));
        Region<SheetPoint> thick = ThinParts.thickened(wedge, 0.6);
        Region<SheetPoint> swept = thick.grown(-0.29).grown(0.295);
        assertThat(thick.minus(swept).area()).isLessThan(0.2);
        assertThat(thick.minus(swept).pieces())
                .allSatisfy(piece -> assertThat(piece.area()).isLessThan(0.05));
    }

    @Test
    void whatIsThickEnoughKeepsItsPlaceCornersIncluded() {
        Region<SheetPoint> cut = rectangle(10, 10, 60, 40)
                .minus(rectangle(15, 15, 55, 35))
                .union(Region.of(
                        Space.SHEET,
                        List.of(List.of(new SheetPoint(60, 10), new SheetPoint(90, 10), new SheetPoint(60, 20)))));
        assertThat(overlap(ThinParts.thickened(cut, 0.5), cut)).isGreaterThan(0.99999);
        assertThat(ThinParts.thickened(rectangle(0, 0, 1, 1).minus(rectangle(0, 0, 1, 1)), 0.5)
                        .isEmpty())
                .isTrue();
    }

    @Test
    void aMinimumOfNothingIsRefused() {
        assertThatThrownBy(() -> ThinParts.thickened(rectangle(0, 0, 1, 1), 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0.0");
    }
}
