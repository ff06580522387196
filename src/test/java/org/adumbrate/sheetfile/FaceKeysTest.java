package org.adumbrate.sheetfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.sheetfile.edit.Edit;
import org.adumbrate.sheetfile.edit.EditResult;
import org.adumbrate.sheetfile.edit.SheetText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Faces wherever a region may stand. */
class FaceKeysTest {
    private static final String PENS = """
            pens: { walls: { color: "#404048" }, panes: { color: "#00aabe" } }
            """;

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void lay() throws IOException {
        desk = new Desk(folder);
    }

    private List<String> complaints(String text) {
        return desk.complaints(Desk.completed(PENS + text));
    }

    @Test
    void facesStandWhereverARegionMay() throws IOException {
        Sheet sheet = desk.read(Desk.completed(PENS + """
                        cut: { color: "#000000" }
                        regions: { counter: { faces: [[212, 188], [220, 190]] } }
                        veils: { pane: { faces: [[10, 20]], of: [walls, cut], gap: 0.5, area: 1.2 cm2, opacity: 30 } }
                        floors: { yard: { elevation: 0 m, faces: [[30, 90]], of: walls } }
                        """)).sheet();
        assertThat(sheet.regions().get("counter"))
                .isEqualTo(new SheetRegion.ByFaces(
                        List.of(new SheetPoint(212, 188), new SheetPoint(220, 190)),
                        List.of(),
                        Length.ofMillimetres(1),
                        Optional.empty()));
        assertThat(sheet.veils().get("pane")).isInstanceOfSatisfying(Veil.ByFaces.class, pane -> {
            assertThat(pane.of()).containsExactly("walls", "cut");
            assertThat(pane.gap().mm()).isEqualTo(0.5);
            assertThat(pane.area()).contains(new SquareMillimetres(120));
            assertThat(pane.opacity().percent()).isEqualTo(30);
        });
        assertThat(sheet.floors().get("yard").faces()).containsExactly(new SheetPoint(30, 90));
        assertThat(sheet.floors().get("yard").of()).containsExactly("walls");
    }

    @Test
    void polygonsOrFacesNotBoth() {
        String polygon = "[[0, 0], [9, 0], [9, 9]]";
        assertThat(complaints("regions: { bed: { points: " + polygon + ", faces: [[2, 1]] } }\n"))
                .singleElement()
                .asString()
                .startsWith("2:17: ")
                .contains("'points' and 'faces'")
                .contains("keep one");
        assertThat(complaints("veils: { pane: { color: \"#00aabe\", faces: [[2, 1]] } }\n"))
                .singleElement()
                .asString()
                .contains("'color' and 'faces'");
        assertThat(complaints("floors: { yard: { elevation: 0, outline: " + polygon + ", faces: [[2, 1]] } }\n"))
                .singleElement()
                .asString()
                .contains("'outline' and 'faces'");
    }

    @Test
    void linesThatBoundFacesAreKnown() {
        assertThat(complaints("regions: { bed: { faces: [[2, 1]], of: [walls, pane] } }\n"))
                .singleElement()
                .asString()
                .contains("pane")
                .contains("did you mean 'panes'");
        // without a cut there are no lines of it
        assertThat(complaints("veils: { pane: { faces: [[2, 1]], of: [cut] } }\n"))
                .hasSize(1);
    }

    @Test
    void whatIsSaidOfFacesNeedsFaces() {
        assertThat(complaints("floors: { yard: { elevation: 0 m, of: [walls] } }\n"))
                .singleElement()
                .asString()
                .contains("'of'")
                .contains("give 'faces' too");
        assertThat(complaints("regions: { bed: { gap: 1 mm, of: [walls] } }\n"))
                .singleElement()
                .asString()
                .contains("needs 'faces'");
        assertThat(complaints("regions: { bed: { faces: [] } }\n")).hasSize(1);
    }

    @Test
    void pointsAreEditedAndPensRenamed() throws IOException {
        String text = Desk.completed(PENS + """
                regions:
                  bed: { faces: [[2, 1], [5, 6.5]], of: [panes], area: 12 mm2 } # the pane
                """);
        SheetText sheet = new SheetText(desk.sheetFile(), text);
        EditResult moved = sheet.edited(List.of(
                new Edit.Set("regions.bed.faces[1]", "[7, 8]"),
                new Edit.Set("regions.bed.area", "14"),
                new Edit.Rename("pens.panes", "glass")));
        assertThat(moved).isInstanceOfSatisfying(EditResult.Edited.class, done -> assertThat(
                        done.text().text())
                .isEqualTo(text.replace("[5, 6.5]", "[7, 8]")
                        .replace("12 mm2", "14 mm2")
                        .replace("panes", "glass")));
    }
}
