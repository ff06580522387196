package org.adumbrate.sheetfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/** Whatever is done to a sheet file, it reads well or is complained of; nothing else comes out. */
class AnyTextTest {
    private static final Path FILE = Path.of("kiln.sheet.yaml");

    @Property(tries = 400, seed = "1953")
    void aSheetFileWithAPieceReplaced(
            @ForAll @IntRange(max = 3300) int at,
            @ForAll @IntRange(max = 40) int length,
            @ForAll("pieces") String piece)
            throws IOException {
        String sheet = Desk.fullSheet();
        int start = Math.min(at, sheet.length());
        check(sheet.substring(0, start) + piece + sheet.substring(Math.min(sheet.length(), start + length)));
    }

    @Property(tries = 200, seed = "1953")
    void anyTextAtAll(@ForAll String text) {
        check(text);
    }

    @Provide
    Arbitrary<String> pieces() {
        return Arbitraries.of(
                        "\n",
                        "  ",
                        "\t",
                        ":",
                        ": ",
                        "- ",
                        "[",
                        "]",
                        "{",
                        "}",
                        ",",
                        "#",
                        "\"",
                        "'",
                        "&a ",
                        "*a",
                        "!!x ",
                        "|",
                        ">",
                        "%",
                        "@",
                        "? ",
                        "---\n",
                        "...\n",
                        "<<: ",
                        "~",
                        "0",
                        "-1",
                        "1e999",
                        "é",
                        "\uD834\uDD1E",
                        "\uD834",
                        "\u0000",
                        "\u2028",
                        "\uFEFF",
                        "\\",
                        "\"\\UFFFFFFFF\"",
                        "x")
                .list()
                .ofMaxSize(6)
                .map(pieces -> String.join("", pieces));
    }

    private static void check(String text) {
        long lines = text.chars()
                        .filter(c -> "\n\r\u0085\u2028\u2029".indexOf(c) >= 0)
                        .count()
                + 1;
        try {
            assertThat(SheetFileReader.read(FILE, text).sheet()).isNotNull();
        } catch (SheetFileFault fault) {
            assertThat(fault.complaints()).isNotEmpty().allSatisfy(complaint -> {
                assertThat(complaint.line()).isBetween(1, (int) lines);
                assertThat(complaint.column()).isBetween(1, text.length() + 1);
                assertThat(complaint.toString().lines()).hasSize(1);
            });
        }
    }
}
