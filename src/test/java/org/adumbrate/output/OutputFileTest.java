package org.adumbrate.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

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

    private Path partOf(String space, long pid) throws IOException {
        Path part = folder.resolve(".sheet.pdf." + space + "." + pid + "-" + UUID.randomUUID() + ".part");
        return Files.writeString(part, "half");
    }

    @Test
    void deadPartsOfThisMachineGoAtOnceAndThoseOfOthersWhenQuiet() throws IOException {
        assumeThat(ProcessSpace.here()).isPresent();
        String here = ProcessSpace.here().orElseThrow();
        Path dead = partOf(here, NOBODY);
        Path living = partOf(here, ProcessHandle.current().pid());
        String elsewhere = here.equals("00000000") ? "00000001" : "00000000";
        Path others = partOf(elsewhere, NOBODY);
        Path othersQuiet = partOf(elsewhere, ProcessHandle.current().pid());
        Files.setLastModifiedTime(othersQuiet, FileTime.from(Instant.now().minus(Duration.ofHours(1))));
        write(folder.resolve("sheet.pdf"), "new");
        assertThat(files()).containsExactlyInAnyOrder(folder.resolve("sheet.pdf"), living, others);
        assertThat(dead).doesNotExist();
    }

    @Test
    void aPartTellsItsMachineAndProcess() throws IOException {
        try (OutputFile file = OutputFile.begin(folder.resolve("sheet.pdf"))) {
            assertThat(file.aside().getFileName().toString())
                    .startsWith(".sheet.pdf."
                            + ProcessSpace.here().map(here -> here + ".").orElse("")
                            + ProcessHandle.current().pid() + "-");
        }
    }

    @Test
    void partsOfAnyTargetInAFolderAreSwept() throws IOException {
        assumeThat(ProcessSpace.here()).isPresent();
        partOf(ProcessSpace.here().orElseThrow(), NOBODY);
        Path ours = partOf(
                ProcessSpace.here().orElseThrow(), ProcessHandle.current().pid());
        OutputFile.sweep(folder);
        assertThat(files()).containsExactly(ours);
    }

    @Test
    void aLinkIsKeptAndTheFileBehindItReplacedInItsOwnFolder() throws IOException {
        Path share = Files.createDirectory(folder.resolve("share"));
        Path shared = Files.writeString(share.resolve("shared.pdf"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("sheet.pdf"), Path.of("share/shared.pdf"));
        try (OutputFile file = OutputFile.begin(link)) {
            file.stream().write("new".getBytes(StandardCharsets.UTF_8));
            assertThat(file.aside().getParent()).isEqualTo(share.toRealPath());
            file.commit();
        }
        assertThat(link).isSymbolicLink().hasContent("new");
        assertThat(shared).isRegularFile().hasContent("new");
        assertThat(OutputFile.behindLink(link)).contains(shared.toRealPath());
        assertThat(OutputFile.behindLink(shared)).isEmpty();
    }

    @Test
    void aLinkToAFileThatIsNotThereYetGetsIt() throws IOException {
        Files.createDirectory(folder.resolve("share"));
        Path link = Files.createSymbolicLink(folder.resolve("sheet.pdf"), Path.of("share/new.pdf"));
        write(link, "new");
        assertThat(link).isSymbolicLink();
        assertThat(folder.resolve("share/new.pdf")).hasContent("new");
    }

    @Test
    void aLinkIntoAFolderThatIsNotThereMakesNone() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("sheet.pdf"), Path.of("unmounted/new.pdf"));
        assertThatThrownBy(() -> OutputFile.begin(link))
                .isInstanceOf(OutputFault.class)
                .hasMessageContaining("whose folder is not there");
        assertThat(folder.resolve("unmounted")).doesNotExist();
    }
}
