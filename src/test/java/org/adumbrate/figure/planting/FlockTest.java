package org.adumbrate.figure.planting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.adumbrate.figure.outline.FigureOutline;
import org.adumbrate.figure.outline.OutlineKind;
import org.adumbrate.figure.outline.ShippedOutlines;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.junit.jupiter.api.Test;

class FlockTest {
    private static final List<FigureOutline> BIRDS = ShippedOutlines.names(OutlineKind.BIRD).stream()
            .map(name -> ShippedOutlines.named(name).orElseThrow())
            .toList();
    private static final Region<SheetPoint> SKY =
            Region.rectangle(Space.SHEET, 0, 0, 200, 60).minus(Region.rectangle(Space.SHEET, 80, 20, 120, 60));

    private static List<Region<SheetPoint>> flock(int count, long seed) {
        return Flock.birds(BIRDS, SKY, 250, new FlockRule(count, 0.6, 25, 90, seed));
    }

    @Test
    void birdsFlyInTheSkyAndApart() {
        List<Region<SheetPoint>> birds = flock(12, 1);
        assertThat(birds).hasSize(12);
        for (int k = 0; k < birds.size(); k++) {
            assertThat(birds.get(k).minus(SKY).area()).isZero();
            for (int n = 0; n < k; n++) {
                assertThat(birds.get(k).within(birds.get(n)).area()).isZero();
            }
        }
    }

    /** Wings of 0.6 m are 6 mm wide at 25 m and 1.7 mm at 90 m; leaning and turning take little from that. */
    @Test
    void sizesFollowFromDistances() {
        List<Region<SheetPoint>> birds = flock(12, 2);
        assertThat(birds).allSatisfy(bird -> {
            double width = bird.extent().orElseThrow().width();
            assertThat(width).isBetween(250 * 0.6 / 90 * 0.85, 250 * 0.6 / 25 * 1.1);
        });
        assertThat(birds.get(11).extent().orElseThrow().width())
                .isGreaterThan(birds.get(0).extent().orElseThrow().width());
    }

    @Test
    void theSeedAloneTellsTheFlock() {
        assertThat(flock(5, 3)).isEqualTo(flock(5, 3)).isNotEqualTo(flock(5, 4));
    }

    @Test
    void aSmallSkyHoldsFewer() {
        Region<SheetPoint> small = Region.rectangle(Space.SHEET, 0, 0, 8, 5);
        assertThat(Flock.birds(BIRDS, small, 250, new FlockRule(50, 0.6, 25, 30, 1)))
                .hasSizeBetween(1, 5);
        assertThat(Flock.birds(BIRDS, Region.empty(Space.SHEET), 250, new FlockRule(5, 0.6, 25, 30, 1)))
                .isEmpty();
    }
}
