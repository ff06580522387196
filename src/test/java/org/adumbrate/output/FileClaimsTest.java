package org.adumbrate.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.fault.Refusal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileClaimsTest {
    @TempDir
    private Path folder;

    private Path lines;

    @BeforeEach
    void anInput() throws IOException {
        lines = Files.writeString(folder.resolve("lines.pdf"), "drawn in a week");
    }

    private void assertClashes(Path written) {
        assertThatThrownBy(() ->
                        new FileClaims().reads(lines).writes(written, "--json").check())
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith(written + " (--json): is one of the inputs")
                .hasMessageContaining("give the output another name");
    }

    @Test
    void anInputUnderItsOwnNameAndByRoundaboutWays() throws IOException {
        assertClashes(lines);
        Files.createDirectory(folder.resolve("out"));
        assertClashes(folder.resolve("out/../lines.pdf"));
        assertClashes(folder.resolve("./missing/.././lines.pdf"));
    }

    @Test
    void anInputBehindLinks() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("result.json"), Path.of("lines.pdf"));
        assertClashes(link);
        assertClashes(Files.createSymbolicLink(folder.resolve("chain.json"), link.getFileName()));
        Files.createSymbolicLink(folder.resolve("here"), folder);
        assertClashes(folder.resolve("here/lines.pdf"));
        assertClashes(Files.createLink(folder.resolve("second-name.json"), lines));
    }

    @Test
    void anInputThatIsALinkItself() throws IOException {
        Path export = Files.createSymbolicLink(folder.resolve("export.pdf"), lines.getFileName());
        assertThat(new FileClaims().reads(export).writes(lines, "--json").clashes())
                .singleElement()
                .hasToString(lines + " (--json): is one of the inputs, " + export
                        + ", and would be written over; give the output another name");
    }

    @Test
    void twoOutputsThatAreNotThereYet() throws IOException {
        Path preview = folder.resolve("out/preview.png");
        Path link = Files.createSymbolicLink(folder.resolve("to-be.json"), preview);
        assertThat(new FileClaims()
                        .writes(preview, "preview")
                        .writes(link, "--json")
                        .clashes())
                .singleElement()
                .hasToString(
                        link + " (--json): is also written as preview, " + preview + "; give one of them another name");
        assertThat(new FileClaims()
                        .writes(preview, "preview")
                        .writes(folder.resolve("out/Preview2.png"), "--json")
                        .clashes())
                .isEmpty();
    }

    @Test
    void whatAnotherRunDeliversIsSpared() {
        Path underlay = folder.resolve("underlay.tif");
        assertThat(new FileClaims()
                        .writes(underlay, "--json")
                        .spares(underlay, "underlay")
                        .clashes())
                .singleElement()
                .hasToString(underlay + " (--json): is also written as underlay; give one of them another name");
    }

    @Test
    void aFileThatWouldHaveToBeAFolder() {
        Path out = folder.resolve("out");
        Path preview = out.resolve("preview.png");
        assertThat(new FileClaims()
                        .writes(preview, "preview")
                        .writes(out, "--json")
                        .clashes())
                .singleElement()
                .hasToString(out + " (--json): " + preview
                        + " (preview) would lie in it as in a folder; give one of them another name");
    }

    @Test
    void caseCountsWhereTheFileSystemSaysSo() throws IOException {
        FileIdentity lower = FileIdentity.of(folder.resolve("out/plan.png"));
        FileIdentity upper = FileIdentity.of(folder.resolve("out/Plan.PNG"));
        FileIdentity other = FileIdentity.of(folder.resolve("out/plan2.png"));
        assertThat(lower.isSame(upper, folder -> true)).isTrue();
        assertThat(lower.isSame(upper, folder -> false)).isFalse();
        assertThat(lower.isSame(other, folder -> true)).isFalse();
        // an accent as one letter and as two
        assertThat(FileIdentity.of(folder.resolve("caf\u00e9.png"))
                        .isSame(FileIdentity.of(folder.resolve("cafe\u0301.png")), folder -> true))
                .isTrue();

        Files.createFile(folder.resolve("probe-a"));
        boolean ignored = Files.exists(folder.resolve("PROBE-A"));
        assertThat(LetterCase.isIgnoredIn(folder)).isEqualTo(ignored);
        assertThat(LetterCase.isIgnoredIn(folder.resolve("not/there"))).isEqualTo(ignored);
        assertThat(lower.isSame(upper)).isEqualTo(ignored);
    }

    @Test
    void bothSpellingsInAFolderShowThatCaseCounts() throws IOException {
        Path some = Files.createDirectory(folder.resolve("some"));
        Files.createFile(some.resolve("a"));
        assumeThat(some.resolve("A")).doesNotExist();
        // one file by two names, as a file system that ignores case would have it
        Files.createLink(some.resolve("A"), some.resolve("a"));
        assertThat(LetterCase.isIgnoredIn(some)).isFalse();
    }

    @Test
    void allThatCannotBeWrittenIsToldAtOnce() throws IOException {
        Path way = Files.writeString(folder.resolve("way"), "a file in the way");
        Path dir = Files.createDirectory(folder.resolve("dir.png"));
        assertThatThrownBy(() -> new FileClaims()
                        .reads(lines)
                        .writes(way.resolve("a.tif"), "underlay")
                        .writes(dir, "preview")
                        .writes(folder.resolve("new/fine.pdf"), "drawing")
                        .writes(way.resolve("deeper/b.pdf"), "svg")
                        .check())
                .isInstanceOf(OutputFault.class)
                .hasMessage(dir + ": is a folder; name a file in it\n" + way.resolve("a.tif") + ", "
                        + way.resolve("deeper/b.pdf") + ": cannot be written (" + way
                        + " is not a folder); choose another place; nothing was written");
        assertThat(folder.resolve("new")).doesNotExist();
    }

    @Test
    void linksThatLeadNowhereOrRound() throws IOException {
        Path gone = Files.createSymbolicLink(folder.resolve("gone.png"), folder.resolve("unmounted/a.png"));
        assertCannotBeWritten(gone, "is a link to " + folder.toRealPath().resolve("unmounted/a.png"));
        Path drive = Files.createSymbolicLink(folder.resolve("drive"), folder.resolve("unmounted"));
        assertCannotBeWritten(drive.resolve("a.png"), drive + " is a link to a folder that is not there");
        Files.createSymbolicLink(folder.resolve("x"), Path.of("y"));
        assertCannotBeWritten(Files.createSymbolicLink(folder.resolve("y"), Path.of("x")), "cannot be followed");
        Files.createDirectory(folder.resolve("real"));
        assertCannotBeWritten(
                Files.createSymbolicLink(folder.resolve("to-folder.png"), Path.of("real")), "is a folder");
        Path fine = Files.createSymbolicLink(folder.resolve("new.png"), folder.resolve("real/new.png"));
        assertThatCode(() -> new FileClaims().writes(fine, "preview").check()).doesNotThrowAnyException();
    }

    private static void assertCannotBeWritten(Path file, String why) {
        assertThatThrownBy(() -> new FileClaims().writes(file, "preview").check())
                .isInstanceOf(OutputFault.class)
                .hasMessageStartingWith(file + ": ")
                .hasMessageContaining(why)
                .hasMessageNotContaining("\n");
    }

    @Test
    void devicesAreNotReplaced() {
        Path nothing = Path.of("/dev/null");
        assumeThat(nothing).exists();
        assertCannotBeWritten(nothing, "device");
    }

    @Test
    void aFolderWithoutPermission() throws IOException {
        assumeThat(folder.getFileSystem().supportedFileAttributeViews()).contains("posix");
        Path locked = Files.createDirectory(folder.resolve("locked"));
        Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("r-xr-xr-x"));
        // an administrator may write there all the same
        assumeThat(Files.isWritable(locked)).isFalse();
        assertCannotBeWritten(locked.resolve("new/a.png"), "there is no permission to write into " + locked);
    }
}
