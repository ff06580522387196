package org.adumbrate.sheetfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Polygons that no hand wrote are read, or refused with their place before they cost a minute. */
@Timeout(value = 30, unit = TimeUnit.SECONDS)
class LargeSheetsTest {
    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void lay() throws IOException {
        desk = new Desk(folder);
    }

    @Test
    void aPolygonOfTenThousandCornersIsRead() {
        assertThat(complaints("regions:\n  bed: " + ring(10_000))).isEmpty();
        assertThat(complaints("regions:\n  bed: " + ring(10_001)))
                .containsExactly("2:8: 'bed' has 10001 items; expected at most 10000");
    }

    @Test
    void aHundredThousandCornersAreRefusedWhereTheyBegin() {
        String told = "more than 100000 values, most of them here; a polygon may have 10000 corners";
        String points = ring(100_000);
        assertThat(complaints("regions:\n  bed: " + points)).containsExactly("2:8: " + told);
        assertThat(complaints("floors:\n  yard: { elevation: 0 m, outline: " + points + " }"))
                .containsExactly("2:36: " + told);
        assertThat(complaints("veils:\n  pane: { points: " + points + " }")).containsExactly("2:19: " + told);
        assertThat(complaints("passes:\n  shadow:\n    file: shadow.jpg\n    mask:\n      inside: [" + points + "]"))
                .containsExactly("5:16: " + told);
    }

    @Test
    void whatAnAliasStandsForCountsAsOftenAsItStands() {
        String copies =
                IntStream.range(0, 20).mapToObj(k -> "\n  copy-" + k + ": *bed").collect(Collectors.joining());
        assertThat(complaints("regions:\n  bed: &bed " + ring(5000) + copies))
                .singleElement()
                .asString()
                .contains("more than 100000 values up to here", "what an alias stands for counts as often");
    }

    @Test
    void aScribbleIsRefusedWhereverAPolygonStands() {
        Random random = new Random(1);
        String scribble = IntStream.range(0, 1000)
                .mapToObj(k -> "[" + random.nextInt(400) + "," + random.nextInt(250) + "]")
                .collect(Collectors.joining(",", "[", "]"));
        String told = "its lines cross each other more than 50000 times, or nearly meet 2000000 times";
        assertThat(complaints("regions:\n  bed: " + scribble)).containsExactly("2:8: 'bed': " + told);
        assertThat(complaints("veils:\n  pane: { points: " + scribble + " }"))
                .containsExactly("2:19: 'points': " + told);
        assertThat(complaints("floors:\n  yard: { elevation: 0 m, outline: [" + scribble + "] }"))
                .containsExactly("2:37: 'outline[0]': " + told);
    }

    private List<String> complaints(String text) {
        return desk.complaints(Desk.completed(text + "\n"));
    }

    private static String ring(int corners) {
        return IntStream.range(0, corners)
                .mapToObj(k -> {
                    double angle = 2 * Math.PI * k / corners;
                    return "[" + Math.round(200 + 90 * Math.cos(angle)) + "," + Math.round(130 + 90 * Math.sin(angle))
                            + "]";
                })
                .collect(Collectors.joining(",", "[", "]"));
    }
}
