package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EditCommandTest {
    private static final String TEXT = """
            lines: lines.pdf
            floors: { yard: 0 m, roof: 3 m }
            figures:
              - { outline: walking, foot: [1, 2], floor: yard, turn: 10 deg }
            deliver: { drawing: out/a.pdf }
            """;

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void desk() throws IOException {
        file = folder.resolve("a.sheet.yaml");
        Files.writeString(file, TEXT);
        Files.createFile(folder.resolve("lines.pdf"));
    }

    private Cli edit(String... words) {
        String[] args = new String[words.length + 2];
        args[0] = "edit";
        args[1] = file.toString();
        System.arraycopy(words, 0, args, 2, words.length);
        return Cli.run(args);
    }

    private void saysAndWrites(String said, String before, String after, String... words) throws IOException {
        Cli result = edit(words);
        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        assertThat(result.out()).isEqualTo(file + ":" + said + "\n");
        assertThat(Files.readString(file)).isEqualTo(TEXT.replace(before, after));
        Files.writeString(file, TEXT);
    }

    @Test
    void saysWhatChangedFromWhatToWhatAndWhere() throws IOException {
        saysAndWrites("4: figures[0].foot: [1, 2] -> [3.5, -4]", "[1, 2]", "[3.5, -4]", "figures[0].foot", "3.5", "-4");
        saysAndWrites("4: figures[0].turn: 10 deg -> -15 deg", "10 deg", "-15 deg", "figures[0].turn", "-15");
        saysAndWrites(
                "1: size: A3 landscape (new)", "lines: l", "size: A3 landscape\nlines: l", "size", "A3", "landscape");
        saysAndWrites("4: figures[0].turn: 10 deg removed", ", turn: 10 deg", "", "figures[0].turn", "--remove");
        saysAndWrites("2: floors.roof: is 3 m already", "", "", "floors.roof", "3 m");
        saysAndWrites(
                "5: figures[1]: { outline: child, foot: [5, 6], floor: roof } (new)",
                "deliver",
                "  - { outline: child, foot: [5, 6], floor: roof }\ndeliver",
                "figures",
                "--add",
                "{outline: child, foot: [5, 6], floor: roof}");
        Cli renamed = edit("floors.yard", "--rename", "hof");
        assertThat(renamed.out())
                .isEqualTo(file + ":2: floors.yard: yard -> hof\n" + file + ":4: figures[0].floor: yard -> hof\n");
    }

    @Test
    void undoesAndTellsAsJson() throws IOException {
        edit("floors.roof", "4 m");
        assertThat(edit("--undo", "--json", "-").out())
                .contains("\"key\": \"floors.roof\", \"before\": \"4 m\", \"after\": \"3 m\", \"line\": 2")
                .contains("\"written\": true");
        assertThat(Files.readString(file)).isEqualTo(TEXT);
        assertThat(edit("--redo", "--dry-run").out()).contains("+floors: { yard: 0 m, roof: 4 m }");
        assertThat(Files.readString(file)).isEqualTo(TEXT);
    }

    @Test
    void refusesInOneLineAndChangesNothing() throws IOException {
        Cli result = edit("floors.roof", "tall");
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.err())
                .startsWith(file + ":2:28: 'roof' is 'tall'; expected a length")
                .hasLineCount(1);
        assertThat(edit("floors.roof", "tall", "--json", "-").out())
                .contains("\"refused\": [{\"line\": 2, \"column\": 28");
        assertThat(Files.readString(file)).isEqualTo(TEXT);
    }

    @Test
    void whatMakesNoSenseIsAQuestionOfUsage() {
        assertThat(edit("floors.roof").code()).isEqualTo(2);
        assertThat(edit().code()).isEqualTo(2);
        assertThat(edit("floors.roof", "1 m", "--remove").err()).contains("--remove and a value do not go together");
        assertThat(edit("--remove", "--undo").code()).isEqualTo(2);
        assertThat(edit("--undo", "floors").err()).contains("--undo takes no key");
        assertThat(edit("floors.roof", "--remvoe").err()).contains("unknown option: '--remvoe'");
        assertThat(Cli.run("edit", folder.resolve("none").toString(), "a", "b").code())
                .isEqualTo(3);
    }

    @Test
    void resultsAreNotWrittenOverWhatTheSheetFileNames() throws IOException {
        Files.writeString(folder.resolve("lines.pdf"), "drawn");
        for (String target : List.of("a.sheet.yaml", "lines.pdf")) {
            Cli result = edit(
                    "figures[0].foot",
                    "3.5",
                    "-4",
                    "--json",
                    folder.resolve(target).toString());
            assertThat(result.code()).isEqualTo(ExitCode.REFUSED);
            assertThat(result.err()).contains(target + " (--json): is one of the inputs");
        }
        String output = TEXT.replaceAll("(?s).*deliver:[^/a-z]*[a-z]+: ([a-z./]+).*", "$1");
        Cli result = edit(
                "figures[0].foot", "3.5", "-4", "--json", folder.resolve(output).toString());
        assertThat(result.err()).contains("is also written as deliver.");
        assertThat(file).hasContent(TEXT);
        assertThat(folder.resolve("lines.pdf")).hasContent("drawn");
    }
}
