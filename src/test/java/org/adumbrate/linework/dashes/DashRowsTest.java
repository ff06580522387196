package org.adumbrate.linework.dashes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.SheetPaths;
import org.adumbrate.linework.Stroke;

class DashRowsTest {
    /** What the quick search passes over would not have been a dashed line either. */
    @Property(tries = 150, seed = "12")
    void theQuickSearchFindsAllLines(@ForAll long seed) {
        List<Stroke> strokes = drawing(new Random(seed));
        DashRuns runs = new DashRuns(strokes);
        boolean[] used = new boolean[runs.size()];
        assertThat(lines(runs, DashRows.sure(runs, used), strokes))
                .isEqualTo(lines(runs, DashRows.all(runs, used, DashLinks.GapsOfLook.ANY), strokes));
    }

    private static List<List<Integer>> lines(DashRuns runs, List<int[]> rows, List<Stroke> strokes) {
        return TouchedEnds.free(runs, new Rows(runs).sure(rows), strokes).stream()
                .map(part -> IntStream.range(0, part.span().count())
                        .mapToObj(part::entered)
                        .toList())
                .toList();
    }

    /** Dashed lines, rows of bars between posts that meet some of them, and what has no rhythm. */
    private static List<Stroke> drawing(Random random) {
        List<Stroke> strokes = new ArrayList<>();
        for (int row = 0; row < 8; row++) {
            double y = 10 + 6 * row;
            double dash = 0.5 + 3 * random.nextDouble();
            double gap = 0.3 + random.nextDouble();
            double dot = random.nextInt(3) == 0 ? 0.4 : dash;
            double posts = random.nextDouble();
            double x = 10;
            for (int k = 0; k < 5 + random.nextInt(20); k++) {
                double to = x + (k % 2 == 0 ? dash : dot);
                strokes.add(line(x, y, to, y));
                for (double end : new double[] {x, to}) {
                    if (random.nextDouble() < posts) {
                        strokes.add(line(end, y, end, y + 2));
                    }
                }
                if (random.nextInt(12) == 0) {
                    strokes.add(line(to, y, to + gap, y));
                }
                x = to + gap;
            }
        }
        for (int k = 0; k < 60; k++) {
            double x = 10 + 60 * random.nextDouble();
            double y = 10 + 50 * random.nextDouble();
            strokes.add(line(x, y, x + 4 * random.nextGaussian(), y + 4 * random.nextGaussian()));
        }
        return strokes;
    }

    private static Stroke line(double x0, double y0, double x1, double y1) {
        return new Stroke(
                SheetPaths.path(Space.PAGE, String.format(Locale.ROOT, "M %.3f %.3f L %.3f %.3f", x0, y0, x1, y1)),
                Srgb.BLACK,
                0.25,
                Dash.NONE,
                LineCap.BUTT,
                LineJoin.MITER,
                /* layer= */ Optional.empty());
    }
}
