package org.adumbrate.linework.pens;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
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
import org.adumbrate.linework.read.LineSheets;
import org.junit.jupiter.api.Test;

class PenSuggestionsTest {
    private static final Path DEMO = Path.of("passes", "kiln-yard");
    private static final Srgb RED = new Srgb(200, 0, 0);

    @Test
    void theDemoIsGuessedFromItsStrokesAlone() throws InputFault {
        Map<String, LineRole> roles = roles(PenSuggestions.of(read("lines-people-height.pdf")));
        assertThat(roles)
                .containsOnly(
                        Map.entry("#404048", LineRole.BUILDING),
                        Map.entry("#0060a8", LineRole.FURNITURE),
                        Map.entry("#b07800", LineRole.PAVING),
                        Map.entry("#000000", LineRole.CUT),
                        Map.entry("#e60028", LineRole.HEIGHT_LINES),
                        Map.entry("#963ca0", LineRole.NEIGHBOUR),
                        Map.entry("#785428", LineRole.GROUND),
                        Map.entry("#00aabe", LineRole.GLASS));
    }

    @Test
    void aFileThatAloneHoldsAColourLendsItItsName() throws InputFault {
        List<PenSuggestion> suggestions =
                PenSuggestions.of(List.of(read("lines.pdf"), read("lines-trees.pdf"), read("lines-people-height.pdf")));
        assertThat(suggestions).hasSize(9);
        assertThat(roles(suggestions))
                .containsEntry("#008838", LineRole.PLANTING)
                .containsEntry("#e60028", LineRole.HEIGHT_LINES)
                .containsEntry("#404048", LineRole.BUILDING);
        assertThat(suggestions.stream().map(PenSuggestion::reason))
                .contains("only lines-trees.pdf holds it", "only lines-people-height.pdf holds it");
    }

    @Test
    void aLayersNameSaysMoreThanItsStrokes() {
        PenSuggestion suggestion =
                PenSuggestions.of(sheet(stroke(RED, "A-Möbel", 0, 0, 90, 40))).get(0);
        assertThat(suggestion)
                .isEqualTo(new PenSuggestion(List.of(RED), LineRole.FURNITURE, "its layer is called \"A-Möbel\""));
        assertThat(suggestion.widthMm()).hasValue(0.18);
    }

    @Test
    void uprightsThatShareNoHorizonAreNoHeightLines() {
        Srgb black = new Srgb(0, 0, 0);
        // 1.65 m under an eye 4.25 m up, horizon at 150: height = 1.65 / 4.25 of the way down from the horizon
        List<Stroke> lines = new ArrayList<>();
        List<Stroke> posts = new ArrayList<>();
        for (int n = 0; n < 8; n++) {
            double foot = 180 + 7 * n;
            lines.add(stroke(RED, null, 20 * n, foot, 20 * n, foot - (foot - 150) * 1.65 / 4.25));
            posts.add(stroke(RED, null, 20 * n, foot, 20 * n, foot - new double[] {9, 31, 17, 5, 26, 12, 40, 21}[n]));
        }
        lines.add(stroke(black, null, 0, 0, 300, 40));
        posts.add(stroke(black, null, 0, 0, 300, 40));
        PenSuggestion heights = PenSuggestions.of(sheet(lines.toArray(Stroke[]::new))).stream()
                .filter(suggestion -> suggestion.color().equals(RED))
                .findFirst()
                .orElseThrow();
        assertThat(heights.role()).isEqualTo(LineRole.HEIGHT_LINES);
        assertThat(heights.reason()).isEqualTo("uprights of one height under one horizon");
        assertThat(heights.widthMm()).isEmpty();
        assertThat(roles(PenSuggestions.of(sheet(posts.toArray(Stroke[]::new)))))
                .doesNotContainValue(LineRole.HEIGHT_LINES);
    }

    @Test
    void aBlackOutlineInShortPiecesIsTheCutIfNoOtherLineShowsInIt() {
        Srgb black = new Srgb(0, 0, 0);
        List<Stroke> lines = new ArrayList<>();
        // a vault of 120 mm across under a ring twice as wide, in pieces of 5 mm, and long lines around it
        for (int n = 0; n < 72; n++) {
            double from = Math.toRadians(5 * n);
            double to = Math.toRadians(5 * (n + 1));
            for (double radius : new double[] {60, 100}) {
                lines.add(stroke(
                        black,
                        null,
                        200 + radius * Math.cos(from),
                        150 + radius * Math.sin(from),
                        200 + radius * Math.cos(to),
                        150 + radius * Math.sin(to)));
            }
        }
        for (int n = 0; n < 20; n++) {
            lines.add(stroke(RED, null, 160, 120 + 3 * n, 240, 121 + 3 * n));
        }
        List<PenSuggestion> found = PenSuggestions.of(sheet(lines.toArray(Stroke[]::new)));
        assertThat(roles(found)).containsEntry("#000000", LineRole.CUT);
        assertThat(found.get(1).reason())
                .isEqualTo("the blackest, and no other line shows in what it encloses, 17 % of the sheet");
        for (int n = 0; n < 8; n++) {
            lines.add(stroke(RED, null, 262, 120 + 3 * n, 290, 121 + 3 * n));
        }
        assertThat(roles(PenSuggestions.of(sheet(lines.toArray(Stroke[]::new)))))
                .doesNotContainEntry("#000000", LineRole.CUT);
    }

    @Test
    void shadesOfAColourShareASuggestion() {
        Srgb shade = new Srgb(202, 1, 0);
        List<PenSuggestion> suggestions =
                PenSuggestions.of(sheet(stroke(RED, null, 0, 0, 50, 9), stroke(shade, null, 0, 5, 30, 9)));
        assertThat(suggestions).hasSize(1);
        assertThat(suggestions.get(0).colors()).containsExactly(RED, shade);
        assertThat(suggestions.get(0).role()).isEqualTo(LineRole.BUILDING);
    }

    @Test
    void everyWeightIsOneOfTheSeries() {
        assertThat(Arrays.stream(LineRole.values())
                        .flatMap(role -> role.widthMm().stream().boxed()))
                .isSubsetOf(0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0);
    }

    private static LineSheet read(String name) throws InputFault {
        return LineSheets.read(DEMO.resolve(name));
    }

    private static Map<String, LineRole> roles(List<PenSuggestion> suggestions) {
        Map<String, LineRole> roles = new LinkedHashMap<>();
        suggestions.forEach(suggestion -> roles.put(suggestion.color().toString(), suggestion.role()));
        return roles;
    }

    private static LineSheet sheet(Stroke... strokes) {
        return new LineSheet(Path.of("sheet.pdf"), new SheetSize(400, 300), List.of(strokes));
    }

    private static Stroke stroke(Srgb color, String layer, double x0, double y0, double x1, double y1) {
        VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
        path.moveTo(x0, y0);
        path.lineTo(x1, y1);
        return new Stroke(
                path.build(), color, 0.2, Dash.NONE, LineCap.BUTT, LineJoin.MITER, Optional.ofNullable(layer));
    }
}
