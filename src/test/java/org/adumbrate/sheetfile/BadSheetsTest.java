package org.adumbrate.sheetfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every complaint, word for word: the table is bad-sheets.txt. */
class BadSheetsTest {
    @TempDir
    Path folder;

    static Stream<Arguments> table() throws IOException {
        String text = Desk.resource("bad-sheets.txt").replaceAll("(?m)^(==|# ).*\n", "");
        return Arrays.stream(text.strip().split("\n\n+", -1)).map(block -> {
            String[] parts = block.strip().split("\n--\n", -1);
            return Arguments.of(Desk.completed(parts[0] + "\n"), Arrays.asList(parts[1].split("\n", -1)));
        });
    }

    @ParameterizedTest
    @MethodSource("table")
    void isToldWhatIsWrongAndWhere(String text, List<String> expected) throws IOException {
        Desk desk = new Desk(folder);
        assertThat(desk.complaints(text))
                .isEqualTo(expected.stream()
                        .map(line -> line.replace("{folder}", folder.toString()))
                        .toList());
    }

    @Test
    void allComplaintsComeAtOnceInTheOrderOfTheText() throws IOException {
        List<String> texts = new ArrayList<>();
        try {
            new Desk(folder).read("""
                    size: A3 lanscape
                    lines: lins.pdf
                    passes:
                      shadow: { file: shadow.jpg, opcity: 60, opacity: 0.6 }
                    figures:
                      - { outline: figures/walking.svg, foot: [1], floor: yrad }
                    floors: { yard: 0 x }
                    deliver: { svg: lines.pdf }
                    """);
        } catch (SheetFileFault fault) {
            assertThat(fault.getMessage().lines())
                    .containsExactlyElementsOf(
                            fault.complaints().stream().map(Complaint::toString).toList());
            fault.complaints().forEach(complaint -> texts.add(complaint.line() + ":" + complaint.column()));
        }
        assertThat(texts).containsExactly("1:7", "2:8", "4:31", "4:52", "6:43", "6:55", "7:17", "8:17");
    }

    @Test
    void aDecimalCommaIsToldForWhatItIs() throws IOException {
        assertThat(new Desk(folder).complaints("""
                        pens: { building: { color: black, width: 0,7 mm } }
                        profile: 0,5 mm
                        """))
                .anyMatch(text -> text.contains("decimals have a point; write width: 0.7 mm"))
                .anyMatch(text -> text.contains("write '0.5 mm'"));
    }

    @Test
    void aComplaintIsOneLineThatBeginsWithItsPlace() throws IOException {
        Complaint complaint =
                new Complaint(Path.of("kiln.sheet.yaml"), 4, 5, "unknown key 'opacty'; did you mean 'opacity'?");
        assertThat(complaint).hasToString("kiln.sheet.yaml:4:5: unknown key 'opacty'; did you mean 'opacity'?");

        String control = "\"a\\nb\\e\\u0085\\u2028" + "x".repeat(100_000) + "\": 1\n";
        assertThat(new Desk(folder).complaints(control))
                .allSatisfy(text -> assertThat(text.lines()).hasSize(1))
                .allSatisfy(text -> assertThat(text).hasSizeLessThan(300));
    }
}
