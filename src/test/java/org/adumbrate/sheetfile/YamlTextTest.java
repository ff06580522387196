package org.adumbrate.sheetfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Random;
import org.adumbrate.fault.InputFault;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFileReader;
import org.adumbrate.sheetfile.yaml.YamlText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is no sheet file at all: refused in one line, at once, whatever it is. */
@Timeout(10)
class YamlTextTest {
    private static final String GOOD = "lines: lines.pdf\ndeliver: { drawing: out/drawing.pdf }\n";

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void lay() throws IOException {
        desk = new Desk(folder);
    }

    @Test
    void aMissingFileAndAFolderAreNoSheetFiles() {
        assertThatThrownBy(() -> SheetFileReader.read(folder.resolve("kiln.yaml")))
                .isInstanceOf(InputFault.class)
                .hasMessage(folder.resolve("kiln.yaml") + ": no such file; name a sheet file, such as kiln.sheet.yaml");
        assertThatThrownBy(() -> SheetFileReader.read(folder))
                .isInstanceOf(InputFault.class)
                .hasMessage(folder + ": is a folder; name the sheet file itself");
    }

    @Test
    void anUnreadableFileIsSaidToBeSo() throws IOException {
        Files.writeString(desk.sheetFile(), GOOD);
        boolean isWithheld = desk.sheetFile().toFile().setReadable(false);
        assumeFalse(!isWithheld || Files.isReadable(desk.sheetFile()), "whoever runs this may read everything");
        assertThatThrownBy(() -> SheetFileReader.read(desk.sheetFile()))
                .isInstanceOf(InputFault.class)
                .hasMessage(desk.sheetFile() + ": cannot be read; check that you are allowed to");
    }

    @Test
    void noMoreIsReadThanASheetFileMayHave() throws IOException {
        Files.write(desk.sheetFile(), new byte[50_000_000]);
        assertThatThrownBy(() -> SheetFileReader.read(desk.sheetFile()))
                .isInstanceOf(InputFault.class)
                .hasMessage(desk.sheetFile() + ": is larger than 1 MiB, as no sheet file is; is it the right file?");
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return 'x';
            }
        };
        assertThatThrownBy(() -> YamlText.whole(desk.sheetFile(), endless)).isInstanceOf(InputFault.class);
    }

    @Test
    void aSheetFileIsUtf8() throws IOException {
        assertThat(text("size: A3\n".getBytes(StandardCharsets.UTF_8))).isEqualTo("size: A3\n");
        assertThat(text("\uFEFFsize: A3\n".getBytes(StandardCharsets.UTF_8))).isEqualTo("size: A3\n");
        assertThatThrownBy(() -> text("size: A3\nlines: Aufriß.pdf\n".getBytes(StandardCharsets.ISO_8859_1)))
                .isInstanceOf(SheetFileFault.class)
                .hasMessage(desk.sheetFile() + ":2:13: this is not UTF-8 text; save the sheet file as UTF-8");
    }

    @Test
    void aBinaryFileIsRefusedAtItsFirstStrangeByte() throws IOException {
        byte[] bytes = new byte[10_000];
        new Random(7).nextBytes(bytes);
        Files.write(desk.sheetFile(), bytes);
        assertThatThrownBy(() -> SheetFileReader.read(desk.sheetFile()))
                .isInstanceOf(SheetFileFault.class)
                .hasMessageContaining(desk.sheetFile() + ":1:")
                .hasMessageContaining("not UTF-8");
        assertThat(desk.complaints("lines: lines.pdf\nsize: \0\n"))
                .containsExactly("2:7: the character U+0000 has no place in a text; is this a sheet file?");
    }

    private String text(byte[] bytes) throws IOException {
        return YamlText.unmarked(YamlText.whole(desk.sheetFile(), new ByteArrayInputStream(bytes)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "# nothing yet\n", "---\n", "~"})
    void anEmptySheetFileIsToldWhatItNeeds(String text) {
        assertThat(desk.complaints(text))
                .containsExactly(
                        "1:1: the sheet file is empty; expected a mapping such as { lines: ..., deliver: ... }");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[lines.pdf]", "- lines.pdf"})
    void aListIsNoSheetFile(String text) {
        assertThat(desk.complaints(text))
                .containsExactly(
                        "1:1: the sheet file is a list; expected a mapping such as { lines: ..., deliver: ... }");
    }

    @Test
    void tabsDoNotIndent() {
        assertThat(desk.complaints("passes:\n\tshadow: { file: shadow.jpg }\n"))
                .containsExactly("2:1: a tab where only spaces may stand; indent with spaces");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\\UFFFFFFFF", "\\x4"})
    void anEscapeMustNameACharacter(String escape) {
        assertThat(desk.complaints("lines: \"" + escape + "\"\n"))
                .singleElement()
                .asString()
                .endsWith("a backslash in double quotes that names no character; use single quotes");
    }

    @Test
    void linesMayEndAsWindowsEndsThem() {
        assertThat(desk.complaints(GOOD.replace("\n", "\r\n"))).isEmpty();
        assertThat(desk.complaints(GOOD.replace("\n", "\r\n") + "sise: A3\r\n"))
                .containsExactly("3:1: unknown key 'sise'; did you mean 'size'?");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{", "- ", "? ", "{a: ", "[[1], "})
    void deepNestingStopsEarly(String level) {
        assertThat(desk.complaints(level.repeat(100_000)))
                .singleElement()
                .asString()
                .endsWith("brackets or indentation go deeper than any sheet file does");
    }

    @Test
    void anAliasBombDoesNotGoOff() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int k = 1; k < 9; k++) {
            String last = "*a" + (k - 1);
            bomb.append("a%d: &a%d [%s]\n".formatted(k, k, String.join(", ", Collections.nCopies(9, last))));
        }
        assertThat(desk.complaints(bomb.toString()))
                .containsExactly("1:1: more than 50 aliases of lists and mappings; write them out");
    }

    @Test
    void aListThatHoldsItselfIsJustWrong() {
        assertThat(desk.complaints("lines: &a [*a]\ndeliver: &b { drawing: *b }\n"))
                .containsExactly("2:24: an alias within the very thing that it stands for; write that out");
    }

    @Test
    void longValuesAreNotLookedAtClosely() {
        String spaces = " ".repeat(500_000);
        assertThat(desk.complaints(GOOD + "size: 1" + spaces + "x" + spaces + "1\n"))
                .singleElement()
                .asString()
                .startsWith("3:7: 'size' is '1 x 1'; expected a size");
        assertThat(desk.complaints(GOOD + "resolution: " + "1".repeat(1_000_000) + "\n"))
                .singleElement()
                .asString()
                .hasSizeLessThan(200);
    }
}
