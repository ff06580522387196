package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;

/** Height lines as exporters and railings leave them: in pieces, hidden in the middle or at an end, one above the other. */
class BrokenHeightsPropertyTest {
    private static final double NOISE = 0.1;

    private static List<HeightLine> broken(List<HeightLine> lines, Random random) {
        List<HeightLine> pieces = new ArrayList<>();
        for (HeightLine line : lines) {
            double y = line.foot().y();
            int parts = 2 + random.nextInt(4);
            for (int k = 0; k < parts; k++) {
                double next = line.foot().y() - line.heightMm() * (k + 1) / parts;
                double gap = k + 1 == parts ? 0 : Math.min(1.5 * random.nextDouble(), (y - next) / 2);
                pieces.add(part(line, y, next + gap));
                y = next;
            }
        }
        return pieces;
    }

    private static HeightLine part(HeightLine line, double foot, double head) {
        return new HeightLine(new SheetPoint(line.xAt(foot), foot), new SheetPoint(line.xAt(head), head));
    }

    private static FittedHeights fit(List<HeightLine> lines) {
        try {
            return HeightFit.of(lines, DrawnHeights.HEIGHT, Stated.NOTHING);
        } catch (Refusal refusal) {
            throw new AssertionError(refusal);
        }
    }

    /** Breaks change nothing: the same lines stand on the same floors. */
    @Property(tries = 30, seed = "20260102")
    void brokenLinesTellWhatWholeOnesDo(
            @ForAll @IntRange(min = 1, max = 100_000) int seed, @ForAll @IntRange(min = 1, max = 4) int floors) {
        DrawnHeights drawn = new DrawnHeights(seed, floors, 8, NOISE, 0.2);
        FittedHeights whole = fit(drawn.lines);
        FittedHeights inPieces = fit(broken(drawn.lines, new Random(seed)));
        assertThat(inPieces.floors()).hasSameSizeAs(whole.floors());
        assertThat(Math.abs(inPieces.horizonMm() - whole.horizonMm())).isLessThan(1 + 3 * whole.horizonErrorMm());
        for (int k = 0; k < whole.floors().size(); k++) {
            FittedFloor one = whole.floors().get(k);
            FittedFloor other = inPieces.floors().get(k);
            assertThat(Math.abs(one.eyeHeightM() - other.eyeHeightM())).isLessThan(0.02 + 3 * one.eyeHeightErrorM());
        }
    }

    /** A person stands above a person on every storey: pieces in one column, and yet not one line. */
    @Test
    void linesOneAboveTheOtherStayApart() throws Refusal {
        View view = new View(260, new SheetPoint(214, 150.5), 4.25, 0);
        List<HeightLine> lines = new ArrayList<>();
        double[] depths = {14, 16, 18.5, 22};
        for (int k = 0; k < depths.length; k++) {
            for (double elevation : new double[] {0, 3.35, 6.7}) {
                lines.add(HeightLinesOnFloors.line(view, k - 1.5, depths[k], elevation));
            }
        }
        FittedHeights fitted = HeightFit.of(lines, DrawnHeights.HEIGHT, Stated.NOTHING);
        assertThat(fitted.floors()).hasSize(3).allSatisfy(floor -> assertThat(floor.lines())
                .hasSize(4));
        FittedHeights inPieces = HeightFit.of(broken(lines, new Random(5)), DrawnHeights.HEIGHT, Stated.NOTHING);
        assertThat(inPieces.floors()).hasSize(3).allSatisfy(floor -> assertThat(floor.lines())
                .hasSize(4));
    }

    /** Behind a railing only the feet and what is above the rail show. */
    @Test
    void whatARailingHidesIsNoFloor() throws Refusal {
        View view = new View(588, new SheetPoint(279, 200), 4.3, 0);
        List<HeightLine> pieces = new ArrayList<>();
        double slab = view.project(new ModelPoint(0, 26, 3.4)).orElseThrow().y();
        double toe = view.project(new ModelPoint(0, 26, 3.5)).orElseThrow().y();
        double rail = view.project(new ModelPoint(0, 26, 4.3)).orElseThrow().y();
        double[] depths = {20.8, 21.4, 24, 27, 30, 32};
        for (int k = 0; k < depths.length; k++) {
            pieces.add(HeightLinesOnFloors.line(view, k - 6, depths[k], 0));
            HeightLine behind = HeightLinesOnFloors.line(view, k + 1, 26.3 + k, 3.4);
            double foot = Math.min(slab, behind.foot().y());
            pieces.add(part(behind, foot, Math.min(toe, foot - 0.2)));
            pieces.add(part(behind, rail, behind.head().y()));
        }
        FittedHeights fitted = HeightFit.of(pieces, DrawnHeights.HEIGHT, Stated.NOTHING);
        assertThat(fitted.floors()).hasSize(2);
        assertThat(fitted.floors().get(0).eyeHeightM()).isBetween(4.29, 4.31);
        assertThat(fitted.floors().get(1).eyeHeightM()).isBetween(0.89, 0.91);
        assertThat(fitted.outliers()).isEmpty();
    }

    /** Uprights that stand on nothing make no floors: at most one drawing in twenty has them by chance. */
    @Test
    void uprightsAtRandomMakeNoFloor() {
        int invented = 0;
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            List<HeightLine> lines = new ArrayList<>();
            for (int k = 0; k < 16; k++) {
                double x = 400 * random.nextDouble();
                double foot = 60 + 200 * random.nextDouble();
                double height = 5 + 50 * random.nextDouble();
                lines.add(new HeightLine(new SheetPoint(x, foot), new SheetPoint(x, foot - height)));
            }
            invented += found(lines).isPresent() ? 1 : 0;
        }
        assertThat(invented).isLessThanOrEqualTo(3);
    }

    private static Optional<FittedHeights> found(List<HeightLine> lines) {
        try {
            return Optional.of(HeightFit.of(lines, DrawnHeights.HEIGHT, Stated.NOTHING));
        } catch (Refusal refusal) {
            return Optional.empty();
        }
    }
}
