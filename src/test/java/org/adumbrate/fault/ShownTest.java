package org.adumbrate.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names from files cannot command a terminal or turn the text around them. */
class ShownTest {
    @ParameterizedTest
    @ValueSource(
            chars = {
                '\u0000', '\u0007', '\u001b', '\u007f', '\u0085', '\u009b', '\u061c', '\u200e', '\u200f', '\u2028',
                '\u2029', '\u202a', '\u202b', '\u202c', '\u202d', '\u202e', '\u2066', '\u2067', '\u2068', '\u2069'
            })
    void whatIsNotToBeSeenIsWrittenOut(char unfit) {
        String code = String.format("\\u%04X", (int) unfit);
        assertThat(Shown.line("a" + unfit + "b")).isEqualTo("a" + code + "b");
        assertThat(Shown.lines("a" + unfit + "b")).isEqualTo("a" + code + "b");
        assertThat(new InputFault(Path.of("x"), "has " + unfit, "do")).hasMessage("x: has " + code + "; do");
    }

    @Test
    void endsOfLinesStayWhereThereMayBeSome() {
        assertThat(Shown.line("a\nb\tc\r")).isEqualTo("a\\u000Ab\\u0009c\\u000D");
        assertThat(Shown.lines("a\nb\tc\r")).isEqualTo("a\nb\tc\\u000D");
    }

    @Test
    void namesOfAllScriptsStayAsTheyAre() {
        String names = "Grundriss Süd, étage 2, план, 図面, חתך, مقطع, e\u0301, \ud83c\udf33";
        assertThat(Shown.line(names)).isEqualTo(names);
    }
}
