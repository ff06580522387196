package org.adumbrate.sheetfile.complaint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    private static final List<String> KEYS = List.of("file", "opacity", "white", "tone", "tint", "mask", "frame");

    /** The first three are the usual textbook cases; the last two tell this distance from its neighbours. */
    @ParameterizedTest
    @CsvSource({
        "kitten, sitting, 3",
        "sunday, saturday, 3",
        "'', mask, 4",
        "opactiy, opacity, 1",
        "ca, abc, 3",
    })
    void slipsAreCountedAsTheLiteratureCountsThem(String a, String b, int slips) {
        assertThat(Nearest.slips(a, b)).isEqualTo(slips);
    }

    @ParameterizedTest
    @CsvSource({"opacty, opacity", "opactiy, opacity", "Opacity, opacity", "msak, mask", "tin, tint", "wihte, white"})
    void aMisspeltWordIsFound(String word, String meant) {
        assertThat(Nearest.to(word, KEYS)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"blend", "x", "opaque-white", "filename"})
    void aWordOfItsOwnIsNotBent(String word) {
        assertThat(Nearest.to(word, KEYS)).isEmpty();
    }

    @Test
    void theNearestWinsAndThenTheFirst() {
        assertThat(Nearest.to("tine", List.of("tone", "tint", "tins"))).contains("tone");
        assertThat(Nearest.to("shadow2.jpg", List.of("shadow1a.jpg", "shadow1.jpg")))
                .contains("shadow1.jpg");
        assertThat(Nearest.hint("tine", List.of())).isEmpty();
    }

    @Property(tries = 300, seed = "1964")
    void slipsAreADistance(
            @ForAll @AlphaChars @StringLength(max = 8) String a, @ForAll @AlphaChars @StringLength(max = 8) String b) {
        assertThat(Nearest.slips(a, b)).isEqualTo(Nearest.slips(b, a));
        assertThat(Nearest.slips(a, a)).isZero();
        assertThat(Nearest.slips(a, b)).isBetween(Math.abs(a.length() - b.length()), Math.max(a.length(), b.length()));
    }
}
