package org.adumbrate.editing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.adumbrate.fault.InputFault;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.edit.Edit;
import org.adumbrate.sheetfile.edit.EditResult;
import org.adumbrate.sheetfile.edit.SheetText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetFileEditsTest {
    private static final String TEXT =
            "\uFEFFlines: lines.pdf # ü\r\nresolution: 300\ncut: { color: black }\ndeliver: { drawing: out/a.pdf }";

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void desk() throws IOException {
        file = folder.resolve("a.sheet.yaml");
        Files.writeString(file, TEXT);
        Files.createFile(folder.resolve("lines.pdf"));
    }

    private String set(String key, String value) throws IOException {
        return told(SheetFileEdits.of(file).edit(List.of(new Edit.Set(key, value)), false));
    }

    private String undo() throws IOException {
        return told(SheetFileEdits.of(file).undo(false));
    }

    private String redo() throws IOException {
        return told(SheetFileEdits.of(file).redo(false));
    }

    private static String told(EditResult result) {
        return result instanceof EditResult.Refused refused
                ? refused.reasons().get(0).text()
                : ((EditResult.Edited) result).changes().get(0).key();
    }

    private String text() throws IOException {
        return Files.readString(file);
    }

    @Test
    void editsAreUndoneAndMadeAgainInTheirOrderToTheByte() throws IOException {
        set("resolution", "600");
        String one = text();
        set("cut.outline", "0.5 mm");
        String two = text();
        assertThat(one).isEqualTo(TEXT.replace("300", "600"));
        assertThat(undo()).isEqualTo("cut.outline");
        assertThat(text()).isEqualTo(one);
        assertThat(undo()).isEqualTo("resolution");
        assertThat(text()).isEqualTo(TEXT);
        assertThat(undo()).contains("no edit to undo");
        assertThat(redo()).isEqualTo("resolution");
        assertThat(redo()).isEqualTo("cut.outline");
        assertThat(text()).isEqualTo(two);
        assertThat(redo()).contains("no undone edit");
        undo();
        set("resolution", "400");
        assertThat(redo()).contains("no undone edit");
    }

    @Test
    void whatSomebodyElseChangedElsewhereStays() throws IOException {
        set("resolution", "600");
        Files.writeString(file, text().replace("# ü", "# other words").replace("black", "white"));
        assertThat(undo()).isEqualTo("resolution");
        assertThat(text()).isEqualTo(TEXT.replace("# ü", "# other words").replace("black", "white"));
        assertThat(redo()).isEqualTo("resolution");
    }

    @Test
    void whatSomebodyElseChangedAtThePlaceIsNotUndone() throws IOException {
        set("resolution", "600");
        String other = text().replace("600", "450");
        Files.writeString(file, other);
        assertThat(undo()).contains("'resolution' cannot be undone").contains("changed since");
        assertThat(text()).isEqualTo(other);
    }

    @Test
    void whatWouldBecomeWrongIsNotUndone() throws IOException {
        told(SheetFileEdits.of(file).edit(List.of(new Edit.Set("floors", "{ yard: 0 m, roof: 9 m }")), false));
        String figures =
                "figures: [{ outline: walking, foot: [1, 2], floor: yard }, { outline: walking, foot: [1, 2], floor: attic }]";
        Files.writeString(file, text().replace("roof", "attic").replace("deliver", figures + "\ndeliver"));
        set("floors.attic", "8 m");
        set("floors.roof", "3 m");
        Files.writeString(file, text().replace("floor: yard", "floor: roof"));
        String other = text();
        assertThat(undo()).contains("cannot be undone").contains("would become wrong");
        assertThat(text()).isEqualTo(other);
    }

    @Test
    void aDryRunWritesNothing() throws IOException {
        EditResult result = SheetFileEdits.of(file).edit(List.of(new Edit.Set("resolution", "600")), true);
        assertThat(((EditResult.Edited) result).text().text()).contains("600");
        assertThat(text()).isEqualTo(TEXT);
        assertThat(folder.resolve("out")).doesNotExist();
        assertThat(LineDiff.of(
                        "a", TEXT, ((EditResult.Edited) result).text().text(), ((EditResult.Edited) result).spans()))
                .containsExactly(
                        "--- a",
                        "+++ a",
                        "@@ -1,4 +1,4 @@",
                        " \uFEFFlines: lines.pdf # ü",
                        "-resolution: 300",
                        "+resolution: 600",
                        " cut: { color: black }",
                        " deliver: { drawing: out/a.pdf }",
                        "\\ No newline at end of file");
    }

    @Test
    void theHistoryFollowsOutputsThatMove() throws IOException {
        set("resolution", "600");
        set("deliver.drawing", "print/a.pdf");
        assertThat(undo()).isEqualTo("deliver.drawing");
        assertThat(undo()).isEqualTo("resolution");
        assertThat(text()).isEqualTo(TEXT);
    }

    @Test
    void theHistoryIsBounded() throws IOException {
        History many = History.NONE;
        for (int k = 0; k < 210; k++) {
            many = many.with(new PastEdit(List.of(), "a", "b", List.of()));
        }
        HistoryFile kept = HistoryFile.of(SheetText.read(file));
        kept.write(many);
        History history = kept.read();
        assertThat(history.done()).hasSize(200);
        String long1 = "[" + "[1, 2], ".repeat(3_000) + "[3, 4]]";
        set("regions.r", long1);
        for (int k = 5; k < 10; k++) {
            set("regions.r", long1.replace("1", "1" + k));
        }
        try (Stream<Path> files = Files.list(folder.resolve("out").resolve(HistoryFile.FOLDER))) {
            assertThat(files.mapToLong(each -> each.toFile().length()).sum()).isBetween(1L << 16, 1L << 20);
        }
    }

    @Test
    void aDamagedHistoryCountsAsNone() throws IOException {
        set("resolution", "600");
        Path kept = HistoryFile.of(SheetText.read(file)).file();
        byte[] bytes = Files.readAllBytes(kept);
        for (int k = 0; k < bytes.length; k++) {
            Files.write(kept, java.util.Arrays.copyOf(bytes, k));
            assertThat(undo()).contains("no edit to undo");
        }
        bytes[5] = 0x7f;
        Files.write(kept, bytes);
        assertThat(undo()).contains("no edit to undo");
        set("resolution", "500");
        assertThat(undo()).isEqualTo("resolution");
    }

    @Test
    void aRunThatEndedBetweenHistoryAndFileLosesNothing() throws IOException {
        set("resolution", "600");
        String one = text();
        set("cut.outline", "0.5 mm");
        Files.writeString(file, one); // the second never came to the file
        assertThat(undo()).isEqualTo("resolution");
        assertThat(text()).isEqualTo(TEXT);
        Files.writeString(file, one); // nor did the undo
        assertThat(undo()).isEqualTo("resolution");
        assertThat(text()).isEqualTo(TEXT);
    }

    @Test
    void aLinkStaysOneAndPermissionsStay() throws IOException {
        assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
        Path real = folder.resolve("real.yaml");
        Files.move(file, real);
        Files.createSymbolicLink(file, Path.of("real.yaml"));
        Files.setPosixFilePermissions(real, PosixFilePermissions.fromString("rw-rw-r-x"));
        set("resolution", "600");
        assertThat(file).isSymbolicLink();
        assertThat(text()).contains("600");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(real)))
                .isEqualTo("rw-rw-r-x");
        undo();
        assertThat(text()).isEqualTo(TEXT);
    }

    @Test
    void aFileThatSomebodyElseChangesMeanwhileIsLeftAlone() throws IOException {
        SheetFileEdits opened = SheetFileEdits.of(file);
        Files.writeString(file, TEXT + "\n");
        assertThatThrownBy(() -> opened.edit(List.of(new Edit.Set("resolution", "600")), false))
                .isInstanceOf(OutputFault.class)
                .hasMessageContaining("changed by somebody else");
        assertThat(text()).isEqualTo(TEXT + "\n");
    }

    @Test
    void whatIsNoSheetFileIsToldSo() throws IOException {
        assertThatThrownBy(() -> SheetFileEdits.of(folder.resolve("none"))).isInstanceOf(InputFault.class);
        Files.writeString(file, "a: [");
        assertThatThrownBy(() -> SheetFileEdits.of(file)).isInstanceOf(SheetFileFault.class);
    }
}
