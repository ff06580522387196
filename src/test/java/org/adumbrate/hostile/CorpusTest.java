package org.adumbrate.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every file of the corpus ends as corpus.txt says: read, or refused in one line with these words, soon and within memory.
 * {@code -Drenew=true} writes the list anew.
 */
@Timeout(600)
class CorpusTest {
    private static final boolean RENEW = Boolean.getBoolean("renew");
    private static final Path LIST = Path.of("src/test/resources/org/adumbrate/hostile/corpus.txt");
    private static final int LONGEST = 70;
    private static final String READ = "read";
    private static final StringBuilder TABLE = new StringBuilder(Tally.HEAD);
    private static final Map<String, String> EXPECTED = new TreeMap<>();
    private static final Map<String, String> SEEN = new TreeMap<>();

    @TempDir
    Path folder;

    @BeforeAll
    static void readList() throws IOException {
        for (String line : RENEW ? List.<String>of() : Files.readAllLines(LIST)) {
            String[] parts = line.split(" \\| ", 2);
            EXPECTED.put(parts[0], parts[1]);
        }
    }

    @ParameterizedTest
    @EnumSource
    void endsAsListed(Format format) throws IOException {
        Tally tally = new Tally();
        Map<String, String> failures = new LinkedHashMap<>();
        Desk.lay(format, folder);
        for (CorpusFile corpusFile : CorpusFile.of(format)) {
            String name = format.folder() + "/" + corpusFile.name();
            Path file = corpusFile.unpackedInto(folder);
            Outcome outcome = format.read(file);
            Files.delete(file);
            tally.add(outcome);
            String words = outcome.words().replace(file.toString(), "");
            SEEN.put(name, outcome.kind() == Outcome.Kind.READ ? READ : own(words));
            String expected = EXPECTED.getOrDefault(name, "");
            boolean same = outcome.kind() == Outcome.Kind.READ ? expected.equals(READ) : words.contains(expected);
            if (!outcome.isGood() || !(same || RENEW)) {
                failures.put(name, outcome + ", expected " + expected);
            }
        }
        TABLE.append(tally.row(format.name()));
        assertThat(failures).isEmpty();
    }

    /** The program's own words in a message: what stands in parentheses may be a library's, and change. */
    private static String own(String message) {
        String line = message.lines().findFirst().orElse("").replaceFirst("^[:\\d]*: ", "");
        int end = line.indexOf(" (");
        String words = end < 0 ? line : line.substring(0, end);
        return words.substring(0, Math.min(LONGEST, words.length())).strip();
    }

    @AfterAll
    static void tell() throws IOException {
        System.out.println(TABLE);
        if (RENEW) {
            List<String> lines = new ArrayList<>();
            SEEN.forEach((name, words) -> lines.add(name + " | " + words));
            Files.write(LIST, lines, StandardCharsets.UTF_8);
            return;
        }
        Set<String> listed = new TreeSet<>(EXPECTED.keySet());
        assertThat(listed).isEqualTo(SEEN.keySet());
    }
}
