package org.adumbrate.proof.text;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class ShownTextTest {
    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.of("a", "b", "\r\n", "\n", "\r", "𝄞", ": ")
                .list()
                .ofMaxSize(12)
                .map(parts -> String.join("", parts));
    }

    @Property(seed = "7", tries = 2000)
    void whatIsShownAfterTypingIsWhatWasTyped(
            @ForAll("texts") String text, @ForAll("texts") String typed, @ForAll boolean marked) {
        String whole = (marked ? "\uFEFF" : "") + text;
        String shown = typed.replace("\r\n", "\n").replace('\r', '\n');
        String next = ShownText.of(whole).typed(shown);
        assertThat(ShownText.of(next).text()).isEqualTo(shown);
        assertThat(next.startsWith("\uFEFF")).isEqualTo(marked);
        assertThat(ShownText.of(whole).typed(ShownText.of(whole).text())).isEqualTo(whole);
    }

    @Property(seed = "7", tries = 500)
    void placesAreThoseOfTheShownText(@ForAll("texts") String text) {
        ShownText shown = ShownText.of(text);
        for (int k = 0; k < text.length(); k++) {
            char c = text.charAt(k);
            assertThat(shown.text().charAt(shown.at(k))).isEqualTo(c == '\r' ? '\n' : c);
        }
        assertThat(shown.at(text.length())).isEqualTo(shown.text().length());
    }

    @Test
    void aNewLineEndsAsTheFirstOneDoes() {
        assertThat(ShownText.of("a\r\nb\n").typed("a\nx\nb\n")).isEqualTo("a\r\nx\r\nb\n");
        assertThat(ShownText.of("a\nb\r\n").typed("a\nx\nb\n")).isEqualTo("a\nx\nb\r\n");
        assertThat(ShownText.of("a\rb").typed("a\nx\nb")).isEqualTo("a\rx\rb");
        assertThat(ShownText.of("").typed("a\n")).isEqualTo("a\n");
    }
}
