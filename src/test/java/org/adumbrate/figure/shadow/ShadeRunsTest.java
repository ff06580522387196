package org.adumbrate.figure.shadow;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ShadeRunsTest {
    private final ShadeRuns runs = new ShadeRuns();

    @Test
    void runsThatOverlapAtOneDistanceBecomeOne() {
        runs.add(0, 1, 2, 2);
        runs.add(0.5, 2, 2, 2);
        runs.add(0.7, 0.9, 2, 2);
        runs.add(3, 4, 2, 2);
        assertThat(runs.count()).isEqualTo(2);
        assertThat(runs.left(0) + runs.right(0) + runs.left(1) + runs.right(1)).isEqualTo(0 + 2 + 3 + 4);
    }

    /** A metre apart, two ends move against each other by 4.65 mm as one looks about the sun's disc. */
    @Test
    void runsFarBehindEachOtherStayApartWhereOneCouldPeepOut() {
        runs.add(0, 1, 2, 2);
        runs.add(0.004, 0.996, 3, 3);
        assertThat(runs.count()).isEqualTo(2);
        runs.clear();
        runs.add(0, 1, 2, 2);
        runs.add(0.005, 0.995, 3, 3);
        assertThat(runs.count()).isEqualTo(1);
    }
}
