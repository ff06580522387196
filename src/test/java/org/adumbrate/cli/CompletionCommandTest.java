package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CompletionCommandTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"bash", "zsh"})
    void bashReadsTheScript(String shell) throws IOException, InterruptedException {
        Cli printed = Cli.run("completion", shell);
        assertThat(printed.code()).isZero();
        assertThat(printed.out()).contains("--dry-run", "heights");
        Path script = Files.writeString(folder.resolve("adumbrate"), printed.out());
        Process bash = new ProcessBuilder("bash", "-n", script.toString())
                .redirectErrorStream(true)
                .start();
        String complaints = new String(bash.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(bash.waitFor()).as(complaints).isZero();
    }

    @Test
    void theScriptForFishNamesCommandsAndOptions() {
        Cli printed = Cli.run("completion", "fish");
        assertThat(printed.code()).isZero();
        assertThat(printed.out())
                .contains("complete -c adumbrate -n __fish_use_subcommand -f -a build -d 'Build everything")
                .contains("-n '__fish_seen_subcommand_from build' -l dpi -r -d 'Pixels per inch")
                .contains("-n '__fish_seen_subcommand_from build' -l dry-run -d '")
                .contains("-n '__fish_seen_subcommand_from completion' -f -a 'bash zsh fish'");
        assertThat(printed.out().lines()).allMatch(line -> line.startsWith("complete -c adumbrate "));
    }

    @Test
    void anUnknownShellIsRefused() {
        assertThat(Cli.run("completion", "csh").code()).isEqualTo(ExitCode.USAGE);
    }
}
