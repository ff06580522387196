package org.adumbrate.sheetfile.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.junit.jupiter.api.Test;

/** What may be changed in a text: where it stands, what holds where it does not, and what may stand there. */
class SheetValuesTest {
    private static final String TEXT = """
            lines: [a.pdf, { file: b.pdf }]
            pens:
              wände: { color: &c "#404040", role: building }   # 😀
              dach: { color: *c, width: 0.02 in }
            figures:
              - { outline: walking, foot: [1, 2.5] }
            deliver: { drawing: out/a.pdf }
            """;

    private static List<SheetValue> values(String text) throws Exception {
        return new SheetText(Path.of("a.sheet.yaml"), text).values();
    }

    private static SheetValue value(String text, String key) throws Exception {
        return values(text).stream()
                .filter(value -> value.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + key));
    }

    private static String written(String text, String key) throws Exception {
        SheetValue.Span span = value(text, key).span().orElseThrow();
        return text.substring(span.from(), span.to());
    }

    @Test
    void whatIsWrittenHasItsSpan() throws Exception {
        for (String text : List.of(TEXT, "\uFEFF" + TEXT.replace("\n", "\r\n"))) {
            assertThat(written(text, "lines[0].file")).isEqualTo("a.pdf");
            assertThat(written(text, "lines[1].file")).isEqualTo("b.pdf");
            assertThat(written(text, "pens.dach.width")).isEqualTo("0.02 in");
            assertThat(written(text, "figures[0].foot[1]")).isEqualTo("2.5");
            assertThat(written(text, "pens.wände.color")).isEqualTo("&c \"#404040\"");
            SheetValue.Span span = value(text, "pens.dach.width").span().orElseThrow();
            assertThat(span.begin()).isEqualTo(new Place(4, 29));
            assertThat(span.end()).isEqualTo(new Place(4, 36));
        }
        assertThat(value(TEXT, "pens.dach.color").isShared()).isTrue();
        assertThat(value(TEXT, "pens.dach.color").value()).isEqualTo("#404040");
        assertThat(value(TEXT, "pens.wände.color").isShared()).isFalse();
    }

    @Test
    void whatHoldsByDefaultIsThereToo() throws Exception {
        assertThat(value(TEXT, "resolution").value()).isEqualTo("300");
        assertThat(value(TEXT, "resolution").span()).isEmpty();
        assertThat(value(TEXT, "pens.wände.width").value()).isEqualTo("0.25 mm");
        assertThat(value(TEXT, "pens.wände.ink").value()).isEqualTo("black");
        assertThat(value(TEXT, "clean-up.join").value()).isEqualTo("0.1 mm");
        assertThat(value(TEXT, "figures[0].look.outline").value()).isEqualTo("0.18 mm");
        assertThat(value(TEXT.replace("figures", "entourage: { outline: 0.5 mm }\nfigures"), "figures[0].look.outline")
                        .value())
                .isEqualTo("0.5 mm");
        assertThat(value(TEXT, "lines[0].fit").value()).isEqualTo("scale");
        assertThat(value(TEXT, "sun").value()).isEmpty();
    }

    @Test
    void whatMayStandThereIsTold() throws Exception {
        SheetValue width = value(TEXT, "pens.dach.width");
        assertThat(width.allowed().type()).isEqualTo("number");
        assertThat(width.allowed().units()).startsWith("mm", "cm", "in");
        assertThat(width.allowed().range().max()).isEqualTo(10);
        assertThat(width.meaning()).startsWith("The line weight in mm");
        assertThat(value(TEXT, "pens.wände.role").allowed().words()).contains("building", "glass");
        assertThat(value(TEXT, "pens.wände.hidden").allowed().type()).isEqualTo("flag");
        assertThat(value(TEXT, "pens.wände.color").isNeeded()).isTrue();
        assertThat(value(TEXT, "deliver.underlay").allowed().words()).isEmpty();
    }

    /** Every value that is written or holds can be set to what it is, which changes nothing or writes just that. */
    @Test
    void everyValueListedCanBeEditedByItsKey() throws Exception {
        SheetText text = SheetText.read(Path.of("passes/kiln-yard/kiln-yard.sheet.yaml"));
        for (SheetValue value : text.values()) {
            if (!value.value().isEmpty() && !List.of("{}", "[]").contains(value.value())) {
                EditResult result = text.edited(new Edit.Set(value.key(), value.value()));
                assertThat(result).as(value.key()).isInstanceOf(EditResult.Edited.class);
                if (value.span().isPresent()) {
                    assertThat(((EditResult.Edited) result).text()).isEqualTo(text);
                }
            }
        }
        assertThat(Files.exists(text.file())).isTrue();
    }

    @Test
    void textsThatAreHardToReadDoNotHang() throws Exception {
        assertThat(values("")).isEmpty();
        assertThat(values("just words")).isNotEmpty();
        StringBuilder bomb = new StringBuilder("regions:\n  a: &a [[1, 2], [3, 4], [5, 6]]\n");
        for (char c = 'b'; c < 'k'; c++) {
            bomb.append("  %c: &%c [*%c, *%c, *%c]\n".formatted(c, c, c - 1, c - 1, c - 1));
        }
        assertThatThrownBy(() -> values(bomb.toString()))
                .isInstanceOf(SheetFileFault.class)
                .hasMessageContaining("more than 100000 values");
    }
}
