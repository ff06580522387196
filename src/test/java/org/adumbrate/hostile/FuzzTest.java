package org.adumbrate.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Files of every format, changed in every way that comes to mind: each is read whole or refused in one line, soon and
 * within memory. {@code -Dfuzz.cases} says how many of each format, {@code -Dfuzz.from} with which number they begin.
 */
@Timeout(3600)
class FuzzTest {
    private static final int CASES = Integer.getInteger("fuzz.cases", 120);
    private static final int FROM = Integer.getInteger("fuzz.from", 0);
    private static final Path FOUND = Path.of("target", "hostile");
    private static final StringBuilder TABLE = new StringBuilder(Tally.HEAD);

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource
    void endsWell(Format format) throws IOException {
        Tally tally = new Tally();
        List<String> failures = new ArrayList<>();
        Desk.lay(format, folder);
        for (int k = FROM; k < FROM + CASES; k++) {
            Mutant mutant = Mutant.of(format, k);
            Path file = Files.write(folder.resolve("case-" + k + mutant.suffix()), mutant.content());
            Outcome outcome = format.read(file);
            tally.add(outcome);
            if (!outcome.isGood()) {
                failures.add(kept(mutant) + ": " + outcome);
            }
            Files.delete(file);
        }
        TABLE.append(tally.row(format.name()));
        assertThat(failures).isEmpty();
        assertThat(tally.refused())
                .as("some are refused, or nothing was changed")
                .isPositive();
    }

    @ParameterizedTest
    @EnumSource
    void theSeedsAreSound(Format format) throws IOException {
        List<byte[]> seeds = Seeds.of(format).files();
        assertThat(seeds).isNotEmpty();
        Desk.lay(format, folder);
        int number = 0;
        int read = 0;
        for (byte[] seed : seeds) {
            byte[] content = format.isEmbedded() ? Envelope.around(format, seed, number++) : seed;
            Outcome outcome = format.read(Files.write(folder.resolve("seed" + format.suffix()), content));
            assertThat(outcome.isGood()).as(outcome.toString()).isTrue();
            read += outcome.kind() == Outcome.Kind.READ ? 1 : 0;
        }
        assertThat(read).as("seeds that are read").isPositive();
    }

    @Test
    void theSameNumberMakesTheSameFile() {
        for (Format format : Format.values()) {
            assertThat(Mutant.of(format, 7).content())
                    .isEqualTo(Mutant.of(format, 7).content())
                    .isNotEqualTo(Mutant.of(format, 8).content());
        }
    }

    @AfterAll
    static void tell() {
        System.out.println(TABLE);
    }

    /** Where a file that went badly is kept; its name is made of its content. */
    private static Path kept(Mutant mutant) throws IOException {
        Path into = Files.createDirectories(FOUND.resolve(mutant.format().folder()));
        return Files.write(into.resolve(ContentHash.of(mutant.content()) + mutant.suffix()), mutant.content());
    }
}
