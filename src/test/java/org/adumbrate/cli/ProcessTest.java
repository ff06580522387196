package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program in a process of its own, its output in pipes. */
class ProcessTest {
    private static final char ESCAPE = '\u001b';

    @TempDir
    private Path folder;

    private Cli run(List<String> options, String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Xshare:auto", "-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true"));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "org.adumbrate.cli.Adumbrate"));
        command.addAll(List.of(args));
        Path err = folder.resolve("err");
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(err.toFile());
        builder.environment().remove("NO_COLOR");
        builder.environment().put("TERM", "xterm-256color");
        Process process = builder.start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Cli(process.waitFor(), out, Files.readString(err));
    }

    @Test
    void whatGoesIntoAPipeHasNoColours() throws IOException, InterruptedException {
        Cli help = run(List.of(), "build", "--help");
        assertThat(help.code()).isZero();
        assertThat(help.out()).contains("--dry-run").doesNotContain("" + ESCAPE);
        Cli unknown = run(List.of(), "bild");
        assertThat(unknown.code()).isEqualTo(ExitCode.USAGE);
        assertThat(unknown.err()).contains("build").doesNotContain("" + ESCAPE);
        assertThat(unknown.out()).isEmpty();
    }

    @Test
    void bothStreamsMustBeTerminals() throws IOException, InterruptedException {
        String out = "-Dadumbrate.terminal.out=true";
        assertThat(run(List.of(out), "--help").out()).doesNotContain("" + ESCAPE);
        assertThat(run(List.of(out, "-Dadumbrate.terminal=true"), "--help").out())
                .contains("" + ESCAPE);
    }

    @Test
    void tooLittleMemoryIsToldInOneLine() throws IOException, InterruptedException {
        Path yard = DemoCopy.kilnYard(folder);
        Path target = Files.writeString(folder.resolve("underlay.tif"), "yesterday's");
        String shadow = yard.resolve("shadow.jpg").toString();
        Cli result = run(
                List.of("-Xmx12m"), "merge", "--size", "17x11in", "--shadow", shadow, "--output", target.toString());
        assertThat(result.code()).as(result.err()).isEqualTo(ExitCode.INPUT_OUTPUT);
        assertThat(result.err().lines().filter(line -> line.startsWith("out of memory")))
                .hasSize(1);
        assertThat(result.err()).contains("-Xmx").doesNotContain("\tat ");
        assertThat(target).hasContent("yesterday's");
    }
}
