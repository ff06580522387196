package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class ColorsTest {
    private static final Map<String, String> USUAL = Map.of("TERM", "xterm-256color");

    @Test
    void coloursAreForTerminals() {
        assertThat(Colors.wanted(true, true, USUAL)).isTrue();
        assertThat(Colors.wanted(false, true, USUAL)).isFalse();
        assertThat(Colors.wanted(true, false, USUAL)).isFalse();
        assertThat(Colors.wanted(true, true, Map.of("TERM", "dumb"))).isFalse();
    }

    @Test
    void noColorDisablesIfItIsThereAndNotEmpty() {
        assertThat(Colors.wanted(true, true, Map.of("NO_COLOR", "1"))).isFalse();
        assertThat(Colors.wanted(true, true, Map.of("NO_COLOR", "0"))).isFalse();
        assertThat(Colors.wanted(true, true, Map.of("NO_COLOR", ""))).isTrue();
    }
}
