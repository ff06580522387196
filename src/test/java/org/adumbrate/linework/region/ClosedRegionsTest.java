package org.adumbrate.linework.region;

import static org.adumbrate.linework.region.Drawn.PAGE;
import static org.adumbrate.linework.region.Drawn.box;
import static org.adumbrate.linework.region.Drawn.line;
import static org.adumbrate.linework.region.Drawn.lines;
import static org.adumbrate.linework.region.Drawn.overlap;
import static org.adumbrate.linework.region.Drawn.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.region.ClosedRegions.Closed;
import org.junit.jupiter.api.Test;

class ClosedRegionsTest {
    private static final double GAP = 0.5;

    private static Closed closed(List<VectorPath<SheetPoint>> lines) {
        return ClosedRegions.of(lines, PAGE, GAP);
    }

    private static void assertSame(Region<SheetPoint> found, Region<SheetPoint> expected) {
        assertThat(overlap(found, expected)).as(found.toString()).isGreaterThan(0.9999);
    }

    @Test
    void cornersWhereBothLinesFallShortComeOutSharp() {
        Closed closed = closed(lines(
                line(10.3, 10, 49.8, 10),
                line(50, 10.25, 50, 29.7),
                line(49.9, 30, 10.02, 30),
                line(10, 29.8, 10, 10.1)));
        assertThat(closed.region().outline().segments()).isEqualTo(4);
        assertThat(closed.region().area()).isCloseTo(800, within(0.01));
        assertThat(closed.looseEnds()).isEmpty();
    }

    @Test
    void aSharpTipIsDrawnOutToItsPoint() {
        // 16 degrees: both lines end 0.3 mm before the tip
        Closed closed = closed(lines(
                line(10.3, 50, 60, 50),
                line(60, 50, 60, 50 + 50 * Math.tan(Math.toRadians(16))),
                line(
                        60,
                        50 + 50 * Math.tan(Math.toRadians(16)),
                        10 + 0.3 * Math.cos(Math.toRadians(16)),
                        50 + 0.3 * Math.sin(Math.toRadians(16)))));
        assertThat(closed.region().contains(new SheetPoint(10.1, 50.01))).isTrue();
        assertThat(closed.region().area()).isCloseTo(1250 * Math.tan(Math.toRadians(16)), within(0.2));
    }

    @Test
    void aRoomIsAHoleAndABeamInItIsCutAgain() {
        Closed closed = closed(lines(box(10, 10, 110, 90), box(20, 20, 100, 80), box(50, 40, 60, 50)));
        Region<SheetPoint> expected =
                rectangle(10, 10, 110, 90).minus(rectangle(20, 20, 100, 80)).union(rectangle(50, 40, 60, 50));
        assertSame(closed.region(), expected);
    }

    @Test
    void groundThatRunsOffTheSheetIsClosedAlongItsEdges() {
        Closed closed = closed(lines(
                line(0, 100, 80, 100), line(80, 100.2, 80, 120), line(80.1, 120, 199.8, 120), box(100, 130, 120, 140)));
        Region<SheetPoint> expected =
                rectangle(0, 100, 80, 150).union(rectangle(79, 120, 200, 150)).minus(rectangle(100, 130, 120, 140));
        assertSame(closed.region(), expected);
        assertThat(closed.topMm()).isZero();
    }

    @Test
    void whatRunsOffTheTopIsTakenBySideAndTold() {
        Closed closed = closed(lines(line(150, 0, 150, 150)));
        assertSame(closed.region(), rectangle(150, 0, 200, 150));
        assertThat(closed.topMm()).isCloseTo(50, within(0.01));
    }

    @Test
    void linesOffTheSheetAreLeftOut() {
        Closed closed = closed(lines(box(-50, 100, 250, 300), box(210, 10, 220, 20)));
        assertSame(closed.region(), rectangle(0, 100, 200, 150));
    }

    @Test
    void aJointDividesNothing() {
        Closed closed = closed(lines(box(10, 10, 60, 30), line(35, 10, 35, 30)));
        assertSame(closed.region(), rectangle(10, 10, 60, 30));
    }

    @Test
    void wallsThatAreOutlinedOneByOneMakeOneCutWithItsRoom() {
        Closed closed = closed(lines(
                box(10, 10, 110, 15),
                box(10, 15, 15, 75),
                box(105, 15, 110, 75),
                box(10, 75, 110, 80),
                box(50, 15, 54, 75)));
        Region<SheetPoint> expected =
                rectangle(10, 10, 110, 80).minus(rectangle(15, 15, 50, 75)).minus(rectangle(54, 15, 105, 75));
        assertSame(closed.region(), expected);
    }

    @Test
    void stonesInARowAndAboveEachOtherAreOneWall() {
        Closed closed =
                closed(lines(box(10, 10, 30, 20), box(30, 10, 50, 20), box(10, 20, 30, 30), box(30, 20, 50, 30)));
        assertSame(closed.region(), rectangle(10, 10, 50, 30));
    }

    @Test
    void piecesDuplicatesAndOverlapsCountOnce() {
        Closed closed = closed(lines(
                line(10, 10, 30, 10),
                line(29.9, 10.001, 50, 10),
                line(20, 10, 40, 10.001),
                line(50, 10, 50, 30),
                line(50, 30, 50, 10),
                line(50, 30, 10, 30),
                line(10, 10, 10, 30)));
        assertSame(closed.region(), rectangle(10, 10, 50, 30));
        assertThat(closed.looseEnds()).isEmpty();
    }

    @Test
    void whatSticksOutBeyondACornerIsNoLooseEnd() {
        Closed closed = closed(
                lines(line(9.8, 10, 50, 10), line(50, 9.7, 50, 30), line(50, 30, 10, 30), line(10, 30, 10, 9.9)));
        assertSame(closed.region(), rectangle(10, 10, 50, 30));
        assertThat(closed.looseEnds()).isEmpty();
    }

    @Test
    void aLooseLineIsToldWithItsPlaceAndBoundsNothing() {
        Closed closed = closed(lines(box(10, 10, 50, 30), line(70, 70, 80, 70), line(30, 10, 30, 25)));
        assertSame(closed.region(), rectangle(10, 10, 50, 30));
        assertThat(closed.looseEnds())
                .extracting(LooseEnd::position)
                .containsExactlyInAnyOrder(new SheetPoint(70, 70), new SheetPoint(80, 70), new SheetPoint(30, 25));
        assertThat(closed.looseEnds())
                .extracting(end -> Math.round(end.gapMm()))
                .containsExactlyInAnyOrder(45L, 50L, 5L);
    }

    @Test
    void aGapWiderThanAllowedIsToldAndNotClosed() {
        List<VectorPath<SheetPoint>> square =
                lines(line(10, 10, 50, 10), line(50, 10, 50, 30), line(50, 30, 10, 30), line(10, 30, 10, 12));
        Closed closed = closed(square);
        assertThat(closed.region().isEmpty()).isTrue();
        assertThat(closed.looseEnds()).hasSize(2).allSatisfy(end -> assertThat(end.gapMm())
                .isCloseTo(2, within(0.01)));
        assertSame(ClosedRegions.of(square, PAGE, 2.1).region(), rectangle(10, 10, 50, 30));
    }

    @Test
    void nothingDrawnEnclosesNothing() {
        assertThat(closed(List.of()).region().isEmpty()).isTrue();
        assertThatThrownBy(() -> ClosedRegions.of(lines(box(1, 1, 2, 2)), PAGE, -1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-1");
    }
}
