package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.adumbrate.registration.Explanation;
import org.adumbrate.sheetfile.PenRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HelpCommandTest {
    static List<String> topics() {
        return HelpTopics.NAMES;
    }

    private static String help(String... words) {
        Cli result =
                Cli.run(Stream.concat(Stream.of("help"), Arrays.stream(words)).toArray(String[]::new));
        assertThat(result.code()).as(result.err()).isZero();
        assertThat(result.err()).isEmpty();
        return result.out();
    }

    @Test
    void helpListsEveryCommandAndTopic() {
        String list = help();
        assertThat(list.lines()).allMatch(line -> line.length() <= 80);
        assertThat(list.lines().map(line -> line.trim().split(" ")[0]))
                .contains("start", "build", "check", "register", "help")
                .containsAll(HelpTopics.NAMES);
    }

    @ParameterizedTest
    @MethodSource("topics")
    void topicsFitOnATerminal(String topic) {
        String text = help(topic);
        // what follows of a command of the same name is its own help
        String own = HelpTopics.text(topic);
        assertThat(text).startsWith(own);
        assertThat(own.lines()).allMatch(line -> line.length() <= 80).noneMatch(line -> line.endsWith(" "));
        assertThat(own).matches(Pattern.compile("[\\n\\x20-\\x7e\u00b0]*")).doesNotContain("@");
        assertThat(HelpTopics.title(topic)).hasSizeLessThanOrEqualTo(61);
    }

    @Test
    void everyTextIsListed() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/org/adumbrate/cli/help"))) {
            assertThat(files.map(file -> file.getFileName().toString().replace(".txt", "")))
                    .containsExactlyInAnyOrderElementsOf(HelpTopics.NAMES);
        }
    }

    @Test
    void helpOfACommandIsThatCommandsHelp() {
        assertThat(help("build")).isEqualTo(Cli.run("build", "--help").out());
        assertThat(help("sun"))
                .startsWith(HelpTopics.text("sun"))
                .endsWith(Cli.run("sun", "--help").out());
    }

    @Test
    void anUnknownTopicIsTold() {
        Cli result = Cli.run("help", "perspectve");
        assertThat(result.code()).isEqualTo(ExitCode.USAGE);
        assertThat(result.err()).startsWith("no topic or command is called 'perspectve'; ");
        assertThat(result.out()).isEmpty();
    }

    @Test
    void theSheetFileTopicHasEveryKeyOfTheSchema() {
        String list = HelpTopics.text("sheet-file");
        String schema = Cli.run("schema").out();
        List<String> keys = Pattern.compile("(?m)^ *\"([a-z-]+)\": \\{\\s*\"description\"")
                .matcher(schema)
                .results()
                .map(match -> match.group(1))
                .distinct()
                .toList();
        assertThat(keys).hasSizeGreaterThan(80);
        assertThat(list.lines().map(line -> line.trim().split(" ")[0])).containsAll(keys);
        assertThat(list).contains("as of passes.shadow, but opacity [45]", "[0.7 mm]", "One of 8, 16. [8]");
    }

    @Test
    void thePassesTopicExplainsEveryWordOfTheResults() {
        String text = HelpTopics.text("passes");
        for (Explanation word : Explanation.values()) {
            assertThat(text).containsPattern("(?m)^  " + word.word() + " {2,}");
        }
    }

    @Test
    void thePensTopicHasTheWidthOfEveryRole() {
        List<MatchResult> pairs = Pattern.compile("([a-z]+) (0\\.\\d+)")
                .matcher(HelpTopics.text("pens"))
                .results()
                .toList();
        for (PenRole role : PenRole.values()) {
            assertThat(pairs)
                    .as(role.name())
                    .anyMatch(pair -> pair.group(1).equalsIgnoreCase(role.name())
                            && Double.parseDouble(pair.group(2)) == role.width().mm());
        }
    }
}
