package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A command line that cannot be understood: what is wrong in one line, and where to read on in another. */
class UsageErrorsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            bild | there is no command 'bild'; did you mean 'build'? | adumbrate
            --verson | there is no option --verson; did you mean '--version'? | adumbrate
            build x --onyl preview | there is no option --onyl; did you mean '--only'? | adumbrate build
            build x -x | there is no option -x | adumbrate build
            build x y | 'y' is one word too many | adumbrate build
            build x dry-run | 'dry-run' is one word too many; did you mean '--dry-run'? | adumbrate build
            build | Missing required parameter: 'FILE.sheet.yaml' | adumbrate build
            build x --dpi abc | 'abc' is not a number | adumbrate build
            build x --dpi 10 | --dpi must be 36 to 2400 | adumbrate build
            build x --dpi | Missing required parameter for option '--dpi' (N) | adumbrate build
            build x --window 1,2 | is no part of the sheet | adumbrate build
            check | Missing required parameter | adumbrate check
            start | Missing required parameter | adumbrate start
            lines x --jsn y | did you mean '--json'? | adumbrate lines
            register x | Missing required parameter | adumbrate register
            merge --size 17x11in | Missing required option | adumbrate merge
            merge --size foo | 'foo' is no size | adumbrate merge
            merge --size 17x11in --shadow a --bits x --output y.tif | 'x' is not a whole number | adumbrate merge
            heights x | Missing required options | adumbrate heights
            sun --plce 1,2 | did you mean '--place'? | adumbrate sun
            sun | give --place and --at | adumbrate sun
            schema x | one word too many | adumbrate schema
            completion basj | 'basj' is none of bash, zsh, fish; did you mean 'bash'? | adumbrate completion
            help pases | no topic or command is called 'pases'; did you mean 'passes'? | adumbrate help
            """)
    void oneLineSaysWhatAndOneWhereToReadOn(String line, String what, String command) {
        Cli result = Cli.run(line.split(" "));
        assertThat(result.code()).isEqualTo(ExitCode.USAGE);
        assertThat(result.out()).isEmpty();
        List<String> told = result.err().lines().toList();
        assertThat(told).hasSize(2);
        assertThat(told.get(0)).contains(what);
        assertThat(told.get(1)).isEqualTo("see " + command + " --help");
    }

    @Test
    void noCommandAtAll() {
        Cli result = Cli.run();
        assertThat(result.code()).isEqualTo(ExitCode.USAGE);
        assertThat(result.err().lines())
                .containsExactly("name a command, such as build, start or help", "see adumbrate --help");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--a\nb", "\u001b[31mx", "a\u2028b"})
    void wordsThatWouldBreakTheLineOrCommandATerminal(String word) {
        Cli result = Cli.run("build", "x", word);
        assertThat(result.code()).isEqualTo(ExitCode.USAGE);
        assertThat(result.err().lines()).hasSize(2);
        assertThat(result.err()).doesNotContain("\u001b", "\u2028");
    }
}
