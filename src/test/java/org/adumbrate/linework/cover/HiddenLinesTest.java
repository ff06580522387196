package org.adumbrate.linework.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Hidden;
import org.adumbrate.linework.SheetPaths;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.FillRule;
import org.junit.jupiter.api.Test;

class HiddenLinesTest {
    private static final String SQUARE = "M 10 10 L 30 10 L 30 30 L 10 30 Z";

    @Test
    void aCoverHidesWhatWasPaintedBeforeAndNothingAfter() {
        HiddenLines lines = new Painting()
                .stroke(path("M 0 20 L 40 20"))
                .stroke(path("M 12 12 L 28 28"))
                .cover(path(SQUARE), FillRule.NON_ZERO)
                .stroke(path("M 0 25 L 40 25"))
                .seen();
        assertThat(lines.seen())
                .extracting(stroke -> stroke.path().toString())
                .containsExactly("M 0.0 20.0 L 10.0 20.0 M 30.0 20.0 L 40.0 20.0", "M 0.0 25.0 L 40.0 25.0");
        assertThat(lines.hidden().strokes()).isEqualTo(1);
        assertThat(lines.hidden().cut()).isEqualTo(1);
        assertThat(lines.hidden().lengthMm()).isCloseTo(20 + 16 * Math.sqrt(2), within(1e-6));
    }

    @Test
    void whatIsNotCoveredStaysTheVerySameStroke() {
        VectorPath<PagePoint> beside = path("M 40 0 L 40 40 Z");
        HiddenLines lines = new Painting()
                .stroke(beside)
                .cover(path(SQUARE), FillRule.NON_ZERO)
                .seen();
        assertThat(lines.seen().get(0).path()).isSameAs(beside);
        assertThat(lines.hidden()).isEqualTo(Hidden.NOTHING);
    }

    @Test
    void aHoleShowsByTheEvenOddRuleAndNotByTheOther() {
        String ringed = SQUARE + " M 15 15 L 25 15 L 25 25 L 15 25 Z";
        assertThat(behind("M 0 20 L 40 20", ringed, FillRule.EVEN_ODD))
                .containsExactly(path("M 0 20 L 10 20 M 15 20 L 25 20 M 30 20 L 40 20"));
        assertThat(behind("M 0 20 L 40 20", ringed, FillRule.NON_ZERO))
                .containsExactly(path("M 0 20 L 10 20 M 30 20 L 40 20"));
    }

    @Test
    void aLineAlongTheRimIsSeen() {
        for (double beside : new double[] {0, 0.008, -0.008, 1e-9, -1e-9}) {
            String line = "M 10 " + (30 + beside) + " L 30 " + (30 + beside);
            assertThat(behind(line, SQUARE, FillRule.NON_ZERO)).containsExactly(path(line));
        }
        assertThat(behind("M 12 29.98 L 28 29.98", SQUARE, FillRule.NON_ZERO)).isEmpty();
    }

    @Test
    void theOutlineOfACoverPaintedBeforeItIsSeenWhole() {
        assertThat(behind(SQUARE, SQUARE, FillRule.NON_ZERO)).containsExactly(path(SQUARE));
        String round = "M 10 20 C 10 14.477 14.477 10 20 10 C 25.523 10 30 14.477 30 20 Z";
        assertThat(behind(round, round, FillRule.NON_ZERO)).containsExactly(path(round));
    }

    @Test
    void aSeamBetweenTwoCoversHidesALineOnIt() {
        List<VectorPath<PagePoint>> seen = new Painting()
                .stroke(path("M 20 0 L 20 40"))
                .cover(path("M 10 10 L 20 10 L 20 30 L 10 30 Z"), FillRule.NON_ZERO)
                .cover(path("M 20 10 L 30 10 L 30 30 L 20 30 Z"), FillRule.NON_ZERO)
                .paths();
        assertThat(seen).containsExactly(path("M 20 0 L 20 10 M 20 30 L 20 40"));
    }

    @Test
    void aLineThatComesUpToACornerAtASlantLeavesNoSliver() {
        // from the inside to a corner, hardly turned from the side; a sliver of 0.6 mm would lie within 0.01 mm of the
        // rim
        assertThat(behind("M 12 29.7 L 30 30", SQUARE, FillRule.NON_ZERO)).isEmpty();
        assertThat(behind("M 12 29.7 L 48 30.3", SQUARE, FillRule.NON_ZERO)).hasSize(1);
    }

    @Test
    void aShortStrokeThatIsNotCoveredStays() {
        assertThat(behind("M 5 5 L 5.02 5", SQUARE, FillRule.NON_ZERO)).containsExactly(path("M 5 5 L 5.02 5"));
        assertThat(behind("M 5 5 L 5 5", SQUARE, FillRule.NON_ZERO)).containsExactly(path("M 5 5 L 5 5"));
        assertThat(behind("M 20 20 L 20 20", SQUARE, FillRule.NON_ZERO)).isEmpty();
    }

    @Test
    void aCurveIsSplitAndStaysOnItsCourse() {
        PathPiece curve = PathPiece.curve(0, 20, 10, 0, 30, 0, 40, 20);
        List<PathPiece> seen = new ArrayList<>();
        behind("M 0 20 C 10 0 30 0 40 20", "M 10 0 L 30 0 L 30 30 L 10 30 Z", FillRule.NON_ZERO)
                .forEach(path -> path.pieces(seen::add));
        assertThat(seen).hasSize(2).noneMatch(PathPiece::straight);
        PathPiece left = seen.get(0);
        assertThat(left.x3()).isCloseTo(10, within(2e-3));
        double t = 0.25;
        for (int k = 0; k < 50; k++) {
            t += (10 - curve.xAt(t)) / 50;
        }
        assertThat(left.y3()).isCloseTo(curve.yAt(t), within(2e-3));
        assertThat(left.xAt(0.5)).isCloseTo(curve.xAt(t / 2), within(2e-3));
        assertThat(left.yAt(0.5)).isCloseTo(curve.yAt(t / 2), within(2e-3));
        assertThat(seen.get(1).x0()).isCloseTo(30, within(2e-3));
    }

    @Test
    void aClipLetsACoverHideNoMoreThanItShows() {
        Clip<PagePoint> left = Clip.rectangle(0, 0, 20, 400);
        Clip<PagePoint> triangle = left.within(path("M 0 0 L 60 0 L 0 60 Z"), FillRule.NON_ZERO);
        assertThat(new Painting()
                        .stroke(path("M 0 22 L 50 22"))
                        .cover(path(SQUARE), FillRule.NON_ZERO, left)
                        .paths())
                .containsExactly(path("M 0 22 L 10 22 M 20 22 L 50 22"));
        assertThat(new Painting()
                        .stroke(path("M 15 0 L 15 50"))
                        .cover(path("M 0 0 L 400 0 L 400 400 L 0 400 Z"), FillRule.NON_ZERO, triangle)
                        .paths())
                .singleElement()
                .satisfies(path -> assertThat(path.length()).isCloseTo(5, within(2e-4)));
    }

    @Test
    void twoThousandTrianglesThatTileLeaveNothing() {
        Painting painting = new Painting();
        for (int k = 0; k < 300; k++) {
            painting.stroke(path("M " + (100 + k / 3.0) + " 100 L " + (200 - k / 3.0) + " 200"));
        }
        int side = 32;
        double step = 120.0 / side;
        for (int i = 0; i < side; i++) {
            for (int k = 0; k < side; k++) {
                double x = 90 + i * step;
                double y = 90 + k * step;
                double right = 90 + (i + 1) * step;
                double bottom = 90 + (k + 1) * step;
                painting.cover(triangle(x, y, right, y, right, bottom), FillRule.NON_ZERO);
                painting.cover(triangle(x, y, x, bottom, right, bottom), FillRule.EVEN_ODD);
            }
        }
        HiddenLines lines = painting.seen();
        assertThat(lines.seen()).isEmpty();
        assertThat(lines.hidden().strokes()).isEqualTo(300);
    }

    private static List<VectorPath<PagePoint>> behind(String line, String cover, FillRule rule) {
        return new Painting().stroke(path(line)).cover(path(cover), rule).paths();
    }

    private static VectorPath<PagePoint> triangle(double x0, double y0, double x1, double y1, double x2, double y2) {
        VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
        path.moveTo(x0, y0);
        path.lineTo(x1, y1);
        path.lineTo(x2, y2);
        path.close();
        return path.build();
    }

    private static VectorPath<PagePoint> path(String text) {
        return SheetPaths.path(Space.PAGE, text);
    }
}
