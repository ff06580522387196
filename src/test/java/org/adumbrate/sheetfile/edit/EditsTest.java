package org.adumbrate.sheetfile.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What edits make of small texts, to the byte. */
class EditsTest {
    private static final String END = "lines: lines.pdf\ndeliver: { drawing: out/a.pdf }\n";

    @TempDir
    private Path folder;

    @BeforeEach
    void exports() throws IOException {
        for (String name : List.of("lines.pdf", "more.pdf", "shadow.jpg", "occlusion.png", "depth.png")) {
            Files.createFile(folder.resolve(name));
        }
    }

    private EditResult edited(String text, Edit... edits) {
        return new SheetText(folder.resolve("a.sheet.yaml"), text).edited(edits);
    }

    private String after(String text, Edit... edits) {
        EditResult result = edited(text, edits);
        assertThat(result).isInstanceOf(EditResult.Edited.class);
        return ((EditResult.Edited) result).text().text();
    }

    private String refusal(String text, Edit... edits) {
        EditResult result = edited(text, edits);
        assertThat(result).isInstanceOf(EditResult.Refused.class);
        Complaint first = ((EditResult.Refused) result).reasons().get(0);
        return first.line() + ":" + first.column() + ": " + first.text();
    }

    /** Texts stand between the two that every sheet file needs. */
    private void becomes(String before, Edit edit, String after) {
        assertThat(after(before + END, edit)).isEqualTo(after + END);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = true,
            value = {
                "0.25 mm   | 0.35     | 0.35 mm",
                "0.25mm    | 0.35 mm  | 0.35mm",
                "0.25      | 0.35 mm  | 0.35",
                "0.02 in   | 0.03     | 0.03 in",
                "0.02 in   | 0.254 mm | 0.01 in",
                "0.02 in   | 0.3 mm   | 0.3 mm",
                "'0.25 mm' | 0.5      | '0.5 mm'",
                "1 pt      | 2        | 2 pt",
            })
    void aNumberKeepsTheUnitThatStandsThere(String before, String typed, String after) {
        String start = "pens: { wall: { color: '#404040', width: ";
        String quotedBefore = before.replace("'", "\"");
        String quotedAfter = after.replace("'", "\"");
        becomes(
                start + quotedBefore + " } }   # über\n",
                new Edit.Set("pens.wall.width", typed),
                start + quotedAfter + " } }   # über\n");
    }

    @Test
    void quotesStayAndColoursGetThem() {
        becomes("cut: { color: '#000000' }\n", new Edit.Set("cut.color", "#0a64c8"), "cut: { color: '#0a64c8' }\n");
        becomes("cut: { color: black }\n", new Edit.Set("cut.color", "#0a64c8"), "cut: { color: \"#0a64c8\" }\n");
        becomes(
                "cut: { color: black }\n",
                new Edit.Set("cut.backing", "#fff"),
                "cut: { color: black, backing: \"#fff\" }\n");
    }

    @Test
    void whatIsMissingOnTheWayIsWritten() {
        becomes("", new Edit.Set("resolution", "600"), "resolution: 600\n");
        assertThat(after(END, new Edit.Set("pens.wall.color", "#404040")))
                .isEqualTo(
                        "lines: lines.pdf\npens:\n  wall: { color: \"#404040\" }\ndeliver: { drawing: out/a.pdf }\n");
        assertThat(after(END, new Edit.Set("floors.yard", "0 m")))
                .isEqualTo("lines: lines.pdf\nfloors: { yard: 0 m }\ndeliver: { drawing: out/a.pdf }\n");
        assertThat(after(END, new Edit.Add("figures", "{ outline: walking, foot: [1, 2] }")))
                .isEqualTo(
                        "lines: lines.pdf\nfigures:\n  - { outline: walking, foot: [1, 2] }\ndeliver: { drawing: out/a.pdf }\n");
    }

    @Test
    void numbersStayNumbersWhereAListStandsForMore() {
        assertThat(after(END, new Edit.Set("regions.bed", "[[1, 2], [3, 2], [3, 4.5]]")))
                .contains("bed: [[1, 2], [3, 2], [3, 4.5]]");
        assertThat(after(
                        END,
                        new Edit.Set("floors.yard", "0 m"),
                        new Edit.Set("floors.yard.outline", "[[1, 2], [3, 2], [3, 4]]")))
                .contains("outline: [[1, 2], [3, 2], [3, 4]]");
    }

    @Test
    void lineEndsMarksAndMissingEndsStay() {
        String text = "\uFEFFlines: lines.pdf\r\ncut:\r\n  color: black # c\r\ndeliver:\n  drawing: a.pdf";
        assertThat(after(text, new Edit.Set("cut.outline", "0.5 mm"), new Edit.Set("deliver.svg", "a.svg")))
                .isEqualTo(
                        "\uFEFFlines: lines.pdf\r\ncut:\r\n  color: black # c\r\n  outline: 0.5 mm\r\ndeliver:\n  drawing: a.pdf\n"
                                + "  svg: a.svg");
        assertThat(after(text, new Edit.Set("deliver.svg", "a.svg"), new Edit.Remove("deliver.svg")))
                .isEqualTo(text);
    }

    @Test
    void listsGrowAndShrink() {
        String two = "order: [a, b]   # c\n";
        String pens = "pens: { a: { color: '#111111' }, b: { color: '#222222' }, c: { color: '#333333' } }\n";
        becomes(pens + two, new Edit.Add("order", "c"), pens + "order: [a, b, c]   # c\n");
        becomes(pens + two, new Edit.Add("order[0]", "c"), pens + "order: [c, a, b]   # c\n");
        becomes(pens + two, new Edit.Remove("order[0]"), pens + "order: [b]   # c\n");
        becomes(pens + two, new Edit.Remove("order[1]"), pens + "order: [a]   # c\n");
        becomes(pens + two, new Edit.Move("order[1]", 0), pens + "order: [b, a]   # c\n");
        becomes(pens + two, new Edit.Set("order", "[b, c, a]"), pens + "order: [b, c, a]   # c\n");
        becomes(pens + "order:\n- a # 1\n- b\n", new Edit.Move("order[1]", 0), pens + "order:\n- b\n- a # 1\n");
        becomes(pens + "order:\n- a # 1\n- b\n", new Edit.Remove("order[0]"), pens + "order:\n- b\n");
        becomes(pens + "order:\n- a # 1\n", new Edit.Remove("order[0]"), pens + "order: [] # 1\n");
        becomes(pens + "order:\n- a # 1\n", new Edit.Add("order", "b"), pens + "order:\n- a # 1\n- b\n");
    }

    @Test
    void whatStandsAloneBecomesAWhole() {
        assertThat(after(END, new Edit.Set("lines[0].fit", "crop")))
                .startsWith("lines: { file: lines.pdf, fit: crop }\n");
        assertThat(after(END, new Edit.Add("lines", "more.pdf"))).startsWith("lines: [lines.pdf, more.pdf]\n");
        becomes("clean-up: false\n", new Edit.Set("clean-up", "true"), "clean-up: true\n");
        becomes(
                "profile: 0.5 mm\n",
                new Edit.Set("profile.ink", "#333"),
                "profile: { width: 0.5 mm, ink: \"#333\" }\n".replace("profile: {", "profile: {"));
    }

    @Test
    void namesAreRenamedWhereTheyAreUsed() {
        String text = """
                floors: { yard: 0 m, roof: 3 m }
                pens: { a: { color: '#111' } }
                veils: { t: { color: '#222222' } }
                figures: [{ outline: walking, foot: [1, 2], floor: yard }]
                order: [t-fill, a]
                """;
        assertThat(after(
                        text + END,
                        new Edit.Rename("floors.yard", "hof"),
                        new Edit.Rename("veils.t", "bäume"),
                        new Edit.Rename("pens.a", "wand")))
                .isEqualTo(text.replace("yard", "hof")
                                .replace("{ t:", "{ bäume:")
                                .replace("t-fill", "bäume-fill")
                                .replace("{ a:", "{ wand:")
                                .replace(", a]", ", wand]")
                        + END);
        assertThat(refusal(text + END, new Edit.Rename("floors.yard", "roof"))).contains("is there already");
        assertThat(refusal(text + END, new Edit.Rename("floors.yard", "a b"))).contains("'a b' is no name");
    }

    @Test
    void anchorsAreNotTornApart() {
        String text =
                "cut: { color: &c black }\nprofile: { width: 0.5 mm, ink: *c }\npens: { w: { color: '#444444', role: building } }\n";
        assertThat(refusal(text + END, new Edit.Set("cut.color", "white")))
                .startsWith("1:")
                .contains("anchor");
        becomes(text, new Edit.Set("profile.ink", "white"), text.replace("*c", "white"));
        assertThat(refusal(text + END, new Edit.Remove("cut"))).contains("anchor");
    }

    @Test
    void whatWouldNotReadWellIsRefusedInTheReadersWords() {
        assertThat(refusal(END, new Edit.Set("resolution", "3")))
                .contains("'resolution' is 3; expected 36 to 2400 dpi");
        assertThat(refusal(END, new Edit.Set("resolutoin", "300"))).contains("did you mean 'resolution'?");
        assertThat(refusal(END, new Edit.Set("passes.shadow.file", "none.jpg"))).contains("no such file");
        assertThat(refusal(END, new Edit.Remove("deliver"))).contains("needs 'deliver'");
        assertThat(refusal(END, new Edit.Set("lines.fit", "crop"))).contains("is a list");
        assertThat(refusal(END, new Edit.Set("a b[", "1"))).contains("no key path");
        assertThat(refusal(END, new Edit.Set("cut", "{ color: \"#000"))).contains("not well written");
    }
}
