package org.adumbrate.delivery.kept;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptFolderTest {
    private static final long DAY_MS = 86_400_000;

    @TempDir
    private Path outputs;

    @Test
    void isFoundAgainByAllThatItDependsOn() {
        folder().keep("cut", String.class, List.of("digest", 0.7), "made");
        assertThat(folder().find("cut", String.class, List.of("digest", 0.7))).contains("made");
        assertThat(folder().find("cut", String.class, List.of("digest", 0.71))).isEmpty();
        assertThat(folder().find("veils", String.class, List.of("digest", 0.7))).isEmpty();
    }

    @Test
    void damagedFilesCountAsMissing() throws IOException {
        folder().keep("cut", String.class, List.of(1), "made of one");
        Path file = kept().get(0);
        byte[] whole = Files.readAllBytes(file);
        for (int k = 0; k < whole.length; k++) {
            byte[] bytes = whole.clone();
            bytes[k] ^= 0x10;
            Files.write(file, bytes);
            assertThat(folder().find("cut", String.class, List.of(1))).isEmpty();
            Files.write(file, java.util.Arrays.copyOf(whole, k));
            assertThat(folder().find("cut", String.class, List.of(1))).isEmpty();
        }
        Files.write(file, whole);
        assertThat(folder().find("cut", String.class, List.of(1))).contains("made of one");
    }

    @Test
    void aFileUnderAnotherPartsNameCountsAsMissing() throws IOException {
        folder().keep("cut", String.class, List.of(1), "the cut");
        Path cut = kept().get(0);
        byte[] bytes = Files.readAllBytes(cut);
        Files.delete(cut);
        folder().keep("veils", String.class, List.of(1), "a veil");
        Files.write(kept().get(0), bytes);
        assertThat(folder().find("veils", String.class, List.of(1))).isEmpty();
    }

    @Test
    void aFileUnderTheNameOfTheSamePartOfSomethingElseCountsAsMissing() throws IOException {
        folder().keep("cleaned pens", String.class, List.of("building"), "lines of the building");
        Path building = kept().get(0);
        byte[] bytes = Files.readAllBytes(building);
        Files.delete(building);
        folder().keep("cleaned pens", String.class, List.of("paving"), "lines of the paving");
        Files.write(kept().get(0), bytes);
        assertThat(folder().find("cleaned pens", String.class, List.of("paving")))
                .isEmpty();
    }

    @Test
    void aValueOfAnotherTypeCountsAsMissing() {
        folder().keep("cut", Integer.class, List.of(1), "a text");
        assertThat(folder().find("cut", Integer.class, List.of(1))).isEmpty();
        folder().keep("cut", String.class, List.of(1), "a text");
        assertThat(folder().find("cut", String.class, List.of(1))).contains("a text");
    }

    @Test
    void whatWasUsedLongestAgoIsGivenUp() throws IOException {
        KeptFolder folder = folder();
        for (int k = 0; k < 8; k++) {
            folder.keep("cut", String.class, List.of(k), "x".repeat(150));
        }
        long now = System.currentTimeMillis();
        for (Path file : kept()) {
            Files.setLastModifiedTime(file, FileTime.fromMillis(now - DAY_MS));
        }
        assertThat(folder.find("cut", String.class, List.of(3))).isPresent();
        folder.trim();
        assertThat(folder.find("cut", String.class, List.of(3))).isPresent();
        assertThat(kept()).hasSize(5);
    }

    @Test
    void whatIsTooLargeIsNotKept() throws IOException {
        folder().keep("cut", String.class, List.of(1), "x".repeat(300));
        assertThat(Files.exists(place())).isFalse();
    }

    @Test
    void unfinishedFilesOfDeadRunsAreClearedAway() throws IOException {
        folder().keep("cut", String.class, List.of(1), "made");
        Path dead = place().resolve(".abc.kept.1-00000000-0000-0000-0000-000000000000.part");
        Path young = place().resolve(".abd.kept.1-00000000-0000-0000-0000-000000000000.part");
        Files.writeString(dead, "x");
        Files.writeString(young, "x");
        Files.setLastModifiedTime(dead, FileTime.fromMillis(System.currentTimeMillis() - DAY_MS));
        folder().trim();
        assertThat(dead).doesNotExist();
        assertThat(young).exists();
    }

    @Test
    void whereNothingCanBeWrittenNothingIsKept() throws IOException {
        Files.writeString(place(), "a file in the way");
        folder().keep("cut", String.class, List.of(1), "made");
        folder().trim();
        assertThat(folder().find("cut", String.class, List.of(1))).isEmpty();
        assertThat(place()).hasContent("a file in the way");
    }

    @Test
    void programsThatCopyForSafetyAreToldToLeaveItOut() {
        folder().keep("cut", String.class, List.of(1), "made");
        // bford.info/cachedir
        assertThat(place().resolve("CACHEDIR.TAG")).content().startsWith("Signature: 8a477f597d28d172789f06886806bc55");
    }

    private KeptFolder folder() {
        return new KeptFolder(place(), 1000);
    }

    private Path place() {
        return outputs.resolve("kept");
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> files = Files.list(place())) {
            return files.filter(file -> file.toString().endsWith(".kept")).toList();
        }
    }
}
