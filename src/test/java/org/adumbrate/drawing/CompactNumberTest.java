package org.adumbrate.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompactNumberTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0004, 0",
        "0.5, .5",
        "-0.125, -.125",
        "12, 12",
        "1.05, 1.05",
        "1.0005, 1.001",
        "-1224.25, -1224.25",
        "100.100, 100.1",
    })
    void numbersAreAsShortAsTheyCanBe(double value, String text) {
        assertThat(CompactNumber.of(value, 3)).isEqualTo(text);
    }

    @Property(tries = 500, seed = "1")
    void numbersReadBackAsTheyWereRounded(@ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        assertThat(Double.parseDouble(CompactNumber.of(value, 4))).isCloseTo(value, within(5.0001e-5));
    }
}
