package org.adumbrate.registration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StraightRunsTest {
    @Test
    void aLineComesBackHoweverItsPiecesStand() {
        int count = 40;
        double[] pieces = new double[4 * count];
        Integer[] order = new Integer[count];
        Arrays.setAll(order, k -> k);
        java.util.Collections.shuffle(Arrays.asList(order), new Random(2));
        for (int k = 0; k < count; k++) {
            boolean back = order[k] % 3 == 0;
            for (int n = 0; n < 2; n++) {
                double along = order[k] + (back ? 1 - n : n);
                pieces[4 * k + 2 * n] = Math.round(1000 * (10 + along * Math.cos(0.4))) / 1000.0;
                pieces[4 * k + 2 * n + 1] = Math.round(1000 * (20 + along * Math.sin(0.4))) / 1000.0;
            }
        }
        double[] runs = StraightRuns.of(pieces);
        assertThat(runs).hasSize(4);
        assertThat(Math.hypot(runs[2] - runs[0], runs[3] - runs[1])).isCloseTo(count, within(0.002));
    }

    @Test
    void cornersForksAndGapsStay() {
        double[] corner = {0, 0, 1, 0, 1, 0, 1, 1};
        assertThat(StraightRuns.of(corner)).containsExactly(corner);
        double[] gap = {0, 0, 1, 0, 1.1, 0, 2, 0};
        assertThat(StraightRuns.of(gap)).containsExactly(gap);
        double[] twice = {0, 0, 1, 0, 1, 0, 2, 0, 1, 0, 2, 0};
        assertThat(StraightRuns.of(twice)).containsExactly(twice);
    }

    @Test
    void chordsOfAnArcAreJoinedNoFartherThanItIsStraight() {
        double[] pieces = new double[4 * 100];
        for (int k = 0; k < 100; k++) {
            for (int n = 0; n < 2; n++) {
                double angle = 0.01 * (k + n);
                pieces[4 * k + 2 * n] = 50 * Math.cos(angle);
                pieces[4 * k + 2 * n + 1] = 50 * Math.sin(angle);
            }
        }
        double[] runs = StraightRuns.of(pieces);
        for (int k = 0; k < runs.length; k += 4) {
            double chord = Math.hypot(runs[k + 2] - runs[k], runs[k + 3] - runs[k + 1]);
            assertThat(chord * chord / (8 * 50)).isLessThan(0.02);
        }
    }
}
