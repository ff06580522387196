package org.adumbrate.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;
import org.junit.jupiter.api.Test;

/** Names say nothing here, and sometimes the wrong thing. */
class SheetRolesTest {
    private static final SheetSize A3 = new SheetSize(420, 297);

    private static Stroke stroke(String color, double x0, double y0, double x1, double y1) {
        VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
        path.moveTo(x0, y0);
        path.lineTo(x1, y1);
        return new Stroke(
                path.build(),
                Srgb.parse(color).orElseThrow(),
                0.18,
                Dash.NONE,
                LineCap.ROUND,
                LineJoin.ROUND,
                Optional.empty());
    }

    private static List<Stroke> building() {
        List<Stroke> strokes = new ArrayList<>();
        for (int k = 0; k < 60; k++) {
            strokes.add(stroke("#404048", 20 + 5 * k, 100 + k, 60 + 5 * k, 140 - k));
            strokes.add(stroke("#b07800", 20 + 5 * k, 200, 40 + 5 * k, 200));
        }
        return strokes;
    }

    private static List<Stroke> trees() {
        List<Stroke> strokes = building();
        for (int k = 0; k < 40; k++) {
            strokes.add(stroke("#008838", 300 + k, 80, 301 + k, 82));
        }
        return strokes;
    }

    /** Uprights on one floor under a horizon at y = 150: their height is a third of the foot's distance from it. */
    private static List<Stroke> heights() {
        List<Stroke> strokes = building();
        for (int k = 0; k < 8; k++) {
            double foot = 165 + 12 * k;
            strokes.add(stroke("#e60028", 40 + 40 * k, foot, 40 + 40 * k, foot - (foot - 150) / 3));
        }
        return strokes;
    }

    private static LineSheet sheet(String name, List<Stroke> strokes) {
        return new LineSheet(Path.of(name), A3, strokes);
    }

    @Test
    void theBaseIsWhatTheOthersHaveToo() {
        SheetRoles roles = SheetRoles.of(
                List.of(sheet("lines.pdf", trees()), sheet("trees.pdf", building()), sheet("a.pdf", heights())));
        assertThat(roles.base().file()).hasFileName("trees.pdf");
        assertThat(roles.trees().orElseThrow().sheet().file()).hasFileName("lines.pdf");
        assertThat(roles.heights().orElseThrow().sheet().file()).hasFileName("a.pdf");
        assertThat(roles.heights().orElseThrow().color()).hasToString("#e60028");
        assertThat(roles.unused()).isEmpty();
    }

    @Test
    void heightLinesServeAsBaseWhereNothingElseDoes() {
        SheetRoles roles = SheetRoles.of(List.of(sheet("a.pdf", trees()), sheet("b.pdf", heights())));
        assertThat(roles.base().file()).hasFileName("b.pdf");
        assertThat(roles.trees()).isPresent();
        assertThat(DraftPens.of(roles).byName()).containsOnlyKeys("building", "paving");
    }

    @Test
    void aSheetWithOneOfManyColoursIsNoBase() {
        List<Stroke> cutOnly = List.of(stroke("#404048", 0, 0, 400, 290));
        SheetRoles roles = SheetRoles.of(List.of(sheet("a.pdf", cutOnly), sheet("b.pdf", building())));
        assertThat(roles.base().file()).hasFileName("b.pdf");
        assertThat(roles.unused()).singleElement().satisfies(one -> assertThat(one.reason())
                .contains("no colour that b.pdf does not show"));
    }

    @Test
    void otherPagesAreTold() {
        LineSheet other = new LineSheet(
                Path.of("detail.pdf"), new SheetSize(210, 297), heights().subList(0, 9));
        SheetRoles roles = SheetRoles.of(List.of(other, sheet("b.pdf", building())));
        assertThat(roles.base().file()).hasFileName("b.pdf");
        assertThat(roles.unused()).singleElement().satisfies(one -> assertThat(one.reason())
                .isEqualTo("its page is 210 x 297 mm and that of the other lines 420 x 297 mm"));
    }
}
