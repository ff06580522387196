package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every sample command of the README and of the help is run, on a copy of the demo and at a low resolution. */
class SamplesTest {
    private static final Pattern SAMPLE = Pattern.compile("(?m)^\\s*(?:\\./)?adumbrate ((?:[^\\n\\\\]|\\\\\\n)+)");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    private Path folder;

    private static List<String> samples(String text) {
        List<String> samples = new ArrayList<>();
        Matcher matcher = SAMPLE.matcher(text);
        while (matcher.find()) {
            samples.add(matcher.group(1).replace("\\\n", " ").trim());
        }
        return samples;
    }

    private void run(String sample) {
        List<String> args = new ArrayList<>();
        Matcher words = WORD.matcher(sample.replaceAll("\\s+[>#].*$", ""));
        while (words.find()) {
            String word = words.group(1) == null ? words.group(2) : words.group(1);
            boolean isPath = word.startsWith("passes/") || word.startsWith("out/");
            args.add(isPath ? folder.resolve(word).toString() : word);
        }
        boolean renders = args.get(0).equals("build") || args.get(0).equals("merge");
        if (renders && !args.contains("--dpi")) {
            args.addAll(List.of("--dpi", "50"));
        }
        args.remove("--watch"); // the same build, but one that ends
        Cli result = args.get(0).equals("proof") ? served(args) : Cli.run(args.toArray(String[]::new));
        assertThat(result.code())
                .as("adumbrate " + sample + "\n" + result.err())
                .isZero();
    }

    /** A sheet held open and closed again; whatever port is free will do, and no browser is opened. */
    private static Cli served(List<String> args) {
        List<String> closed = new ArrayList<>(args);
        int port = closed.indexOf("--port");
        if (port >= 0) {
            closed.subList(port, port + 2).clear();
        }
        closed.remove("--no-open");
        if (!closed.contains("--help")) {
            closed.add("--no-open");
        }
        try (ServingCli run = ServingCli.begin(closed.toArray(String[]::new))) {
            return run.end();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void samplesOfTheReadmeRun() throws IOException {
        DemoCopy.kilnYard(folder);
        List<String> samples = samples(Files.readString(Path.of("README.md")));
        assertThat(samples).hasSizeGreaterThan(4);
        samples.forEach(this::run);
    }

    @Test
    void everyCommandsHelpHasSamplesThatRun() throws IOException {
        DemoCopy.kilnYard(folder);
        for (String command : List.of(
                "proof",
                "start",
                "build",
                "check",
                "edit",
                "merge",
                "lines",
                "register",
                "heights",
                "sun",
                "schema",
                "completion",
                "help")) {
            Cli help = Cli.run(command, "--help");
            assertThat(help.code()).isZero();
            List<String> samples = samples(help.out());
            samples.removeIf(sample -> sample.contains("[") || sample.startsWith(command + " LINES"));
            assertThat(samples).as(command).isNotEmpty();
            samples.forEach(this::run);
        }
    }

    static List<String> topics() {
        return HelpTopics.NAMES;
    }

    @ParameterizedTest
    @MethodSource("topics")
    void samplesOfATopicRun(String topic) throws IOException {
        DemoCopy.kilnYard(folder);
        samples(HelpTopics.text(topic)).forEach(this::run);
    }

    @Test
    void theProgramsHelpNamesItsExitCodes() {
        Cli help = Cli.run("--help");
        assertThat(Arrays.stream(help.out().split("\n")).map(String::trim))
                .anyMatch(line -> line.startsWith("70"))
                .anyMatch(line -> line.startsWith("build"));
    }
}
