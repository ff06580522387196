package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressLineTest {
    private final StringWriter terminal = new StringWriter();
    private double seconds;
    private final ProgressLine line = new ProgressLine(new PrintWriter(terminal), () -> (long) (seconds * 1e9));

    private String at(double time, String stage, double share) {
        seconds = time;
        terminal.getBuffer().setLength(0);
        line.at(stage, share);
        return terminal.toString();
    }

    @Test
    void timeLeftIsToldOfWorkThatLasts() {
        assertThat(at(10, "underlay", 0)).isEqualTo("\runderlay");
        assertThat(at(12, "underlay", 0.1)).contains("10 %").doesNotContain("left");
        assertThat(at(14, "underlay", 0.1)).contains("10 %, 36 s left");
        assertThat(at(20, "underlay", 0.1)).contains("10 %, 1 min 30 s left");
    }

    @Test
    void theLineIsOverwrittenAndClearedWithoutCommandsOfTheTerminal() {
        at(0, "registration", 0);
        assertThat(at(1, "svg", 0)).isEqualTo("\rsvg         ");
        assertThat(at(1.05, "svg", 0.5)).isEmpty();
        assertThat(at(1.2, "svg", 1)).isEqualTo("\r   \r");
    }

    @Test
    void nothingIsShownWhereNoTerminalIs() {
        Cli result = Cli.run("build", "missing.sheet.yaml");
        assertThat(result.err()).doesNotContain("\r").doesNotContain("\u001b");
    }
}
