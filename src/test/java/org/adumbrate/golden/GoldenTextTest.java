package org.adumbrate.golden;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The comparator must be able to fail, in each of its ways. */
class GoldenTextTest {
    private static final String LINE = "<line class=\"ray\" x1=\"10.25\" y1=\"-.5\"/>";

    @Test
    void theSameTextIsAccepted() {
        assertThat(GoldenText.difference(LINE, LINE, 0)).isEmpty();
    }

    @Test
    void aNumberMayDifferByTheLimit() {
        assertThat(GoldenText.difference(LINE, LINE.replace("10.25", "10.26"), 0.011))
                .isEmpty();
        assertThat(GoldenText.difference(LINE, LINE.replace("10.25", "10.27"), 0.011))
                .isPresent();
        assertThat(GoldenText.difference(LINE, LINE.replace("-.5", ".5"), 0.011))
                .isPresent();
    }

    @Test
    void anotherWordIsNotAcceptedNorMoreOrLess() {
        assertThat(GoldenText.difference(LINE, LINE.replace("ray", "rat"), 1)).isPresent();
        assertThat(GoldenText.difference(LINE, LINE.replace("ray", "7"), 1)).isPresent();
        assertThat(GoldenText.difference(LINE, LINE + "\n", 1)).isPresent();
        assertThat(GoldenText.difference(LINE + " 3", LINE + " ", 1)).isPresent();
    }
}
