package org.adumbrate.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.adumbrate.fault.OutputFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFileTest {
    /** Above the highest process id of Linux, 2^22 (proc(5)), and no multiple of 4 as those of Windows are. */
    private static final long NOBODY = 999_999_999L;

    @TempDir
    private Path folder;

    private static void write(Path target, String text) throws IOException {
        try (OutputFile file = OutputFile.begin(target)) {
            file.stream().write(text.getBytes(StandardCharsets.UTF_8));
            file.commit();
        }
    }

    private Path part(String name, long pid, Duration age) throws IOException {
        Path part = folder.resolve("." + name + "." + pid + "-" + UUID.randomUUID() + ".part");
        Files.writeString(part, "half");
        Files.setLastModifiedTime(part, FileTime.from(Instant.now().minus(age)));
        return part;
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    @Test
    void theOldFileStandsUntilTheNewOneIsWhole() throws IOException {
        Path target = folder.resolve("sheet.pdf");
        write(target, "old");
        try (OutputFile file = OutputFile.begin(target)) {
            file.stream().write(new byte[100_000]);
            assertThat(target).hasContent("old");
        }
        assertThat(target).hasContent("old");
        write(target, "new");
        assertThat(target).hasContent("new");
        assertThat(files()).containsExactly(target);
    }

    @Test
    void aLaterRunRemovesWhatAKilledOneLeft() throws IOException {
        part("sheet.pdf", NOBODY, Duration.ofHours(1));
        write(folder.resolve("sheet.pdf"), "new");
        assertThat(files()).containsExactly(folder.resolve("sheet.pdf"));
    }

    @Test
    void partsThatMayStillGrowOrAreNotOursStay() throws IOException {
        Path living = part("sheet.pdf", ProcessHandle.current().pid(), Duration.ofHours(1));
        Path fresh = part("sheet.pdf", NOBODY, Duration.ofSeconds(5));
        Path others = part("sheet.pdf.bak", NOBODY, Duration.ofHours(1));
        Path foreign = Files.writeString(folder.resolve(".sheet.pdf.part"), "mine");
        write(folder.resolve("sheet.pdf"), "new");
        assertThat(files()).contains(living, fresh, others, foreign).hasSize(5);
    }

    @Test
    void twoThatWriteOneTargetDoNotMix() throws IOException {
        Path target = folder.resolve("sheet.pdf");
        try (OutputFile first = OutputFile.begin(target);
                OutputFile second = OutputFile.begin(target)) {
            first.stream().write("first".getBytes(StandardCharsets.UTF_8));
            second.stream().write("second".getBytes(StandardCharsets.UTF_8));
            first.commit();
            assertThat(target).hasContent("first");
            second.commit();
        }
        assertThat(target).hasContent("second");
        assertThat(files()).containsExactly(target);
    }

    @Test
    void aFileInTheWayOfAFolderIsToldInOneLine() throws IOException {
        Path file = Files.writeString(folder.resolve("out"), "");
        assertThatThrownBy(() -> OutputFile.begin(file.resolve("sheet.pdf")))
                .isInstanceOf(OutputFault.class)
                .hasMessageContaining("sheet.pdf: cannot be written")
                .hasMessageNotContaining("\n");
    }
}
