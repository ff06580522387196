package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;

class ColumnTest {
    private static HeightLine piece(double x, double foot, double head) {
        return new HeightLine(new SheetPoint(x, foot), new SheetPoint(x, head));
    }

    private static List<Run> runs(HeightLine... pieces) {
        return Uprights.of(List.of(pieces)).runs();
    }

    private static double cost(List<Run> runs, double foot, double head) {
        return runs.stream()
                .filter(run ->
                        run.line().foot().y() == foot && run.line().head().y() == head)
                .mapToDouble(Run::cost)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }

    @Test
    void aLineAloneIsItself() {
        assertThat(runs(piece(10, 50, 30))).singleElement().satisfies(run -> {
            assertThat(run.line()).isEqualTo(piece(10, 50, 30));
            assertThat(run.cost()).isZero();
        });
    }

    @Test
    void piecesWithASmallGapAreRatherOneLine() {
        List<Run> runs = runs(piece(10, 50, 41), piece(10, 40, 30));
        assertThat(runs).hasSize(3);
        assertThat(cost(runs, 50, 30)).isLessThan(0.1);
        assertThat(cost(runs, 50, 41)).isGreaterThan(2);
        assertThat(cost(runs, 40, 30)).isGreaterThan(2);
    }

    @Test
    void linesFarAboveEachOtherMayBeEither() {
        List<Run> runs = runs(piece(10, 150, 120), piece(10, 90, 60));
        assertThat(cost(runs, 150, 120)).isLessThan(cost(runs, 150, 60));
    }

    @Test
    void overlappingLinesAreTwo() {
        assertThat(runs(piece(10, 50, 30), piece(10, 45, 28))).hasSize(2);
    }

    @Test
    void linesBesideEachOtherAreTwo() {
        assertThat(runs(piece(10, 50, 41), piece(10.5, 40, 30))).hasSize(2);
    }

    @Test
    void dashesAreOneLineHoweverMany() {
        List<HeightLine> dashes = new ArrayList<>();
        for (int k = 0; k < 100; k++) {
            dashes.add(piece(10, 100 - k, 99.4 - k));
        }
        List<Run> runs = Uprights.of(dashes).runs();
        assertThat(runs).anySatisfy(run -> {
            assertThat(run.line().foot().y()).isEqualTo(100);
            assertThat(run.line().head().y()).isEqualTo(99.4 - 99);
            assertThat(run.cost()).isLessThan(5);
        });
    }

    @Test
    void whatIsLeftIsToldAsWholeAsItSeems() {
        Uprights uprights = Uprights.of(List.of(piece(10, 50, 41), piece(10, 40, 30), piece(80, 50, 30)));
        assertThat(uprights.strays(List.of())).containsExactly(piece(10, 50, 30), piece(80, 50, 30));
    }
}
