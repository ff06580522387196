package org.adumbrate.linework.region;

import static org.adumbrate.linework.region.Drawn.PAGE;
import static org.adumbrate.linework.region.Drawn.arc;
import static org.adumbrate.linework.region.Drawn.box;
import static org.adumbrate.linework.region.Drawn.line;
import static org.adumbrate.linework.region.Drawn.lines;
import static org.adumbrate.linework.region.Drawn.overlap;
import static org.adumbrate.linework.region.Drawn.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.junit.jupiter.api.Test;

class VeilsTest {
    private static final double GAP = 0.4;

    private static Region<SheetPoint> enclosed(
            List<VectorPath<SheetPoint>> lines, List<VectorPath<SheetPoint>> others) {
        return Veils.enclosed(lines, others, PAGE, GAP);
    }

    private static Region<SheetPoint> disc(double x, double y, double radius) {
        return Region.evenOdd(arc(x, y, radius, 0, 360), 0.01);
    }

    @Test
    void overlappingCrownsAreOneAndLinesWithinDivideNothing() {
        Region<SheetPoint> veil = enclosed(
                lines(arc(60, 60, 20, 3, 358.9), arc(80, 60, 20, 0, 360), arc(60, 60, 8, 0, 360), line(50, 55, 60, 70)),
                List.of());
        assertThat(overlap(veil, disc(60, 60, 20).union(disc(80, 60, 20)))).isGreaterThan(0.999);
        assertThat(veil.outline().runs()).isEqualTo(1);
    }

    @Test
    void aCrownBehindARoofIsClosedAlongTheRoof() {
        List<VectorPath<SheetPoint>> roof =
                lines(line(20, 70, 60, 60), line(60.2, 60.05, 120, 75), line(20, 70, 20, 80));
        Region<SheetPoint> full = disc(60, 60, 20);
        Region<SheetPoint> hidden = Region.evenOdd(line(20, 70, 60, 60, 120, 75, 120, 140, 20, 140), 0.01);
        Region<SheetPoint> seen = full.minus(hidden);
        List<VectorPath<SheetPoint>> drawn = hiddenBy(hidden, arc(60, 60, 20, 0, 360));
        assertThat(overlap(enclosed(drawn, roof), seen)).isGreaterThan(0.999);
    }

    @Test
    void aPostBeforeACrownPartsItAndIsNotVeiled() {
        Region<SheetPoint> post = rectangle(58, 20, 61, 120);
        List<VectorPath<SheetPoint>> drawn = hiddenBy(post, arc(60, 60, 20, 0, 360));
        Region<SheetPoint> veil = enclosed(drawn, lines(box(58, 20, 61, 120)));
        assertThat(overlap(veil, disc(60, 60, 20).minus(post))).isGreaterThan(0.999);
    }

    @Test
    void whatLiesBetweenACrownAWallAndTheGroundIsNotVeiled() {
        // a crown beside a wall, its stem on the ground: the space below the crown is shut in as well
        List<VectorPath<SheetPoint>> others =
                lines(line(90, 10, 90, 120), line(10, 120, 90, 120), line(62, 90, 90, 90));
        Region<SheetPoint> right = rectangle(90, 0, 200, 150);
        List<VectorPath<SheetPoint>> tree = hiddenBy(right, arc(75, 50, 20, 0, 360));
        tree.add(line(58, 60.5, 58, 120));
        tree.add(line(62, 65.2, 62, 120));
        Region<SheetPoint> veil = enclosed(tree, others);
        Region<SheetPoint> crown = disc(75, 50, 20).minus(right);
        assertThat(veil.minus(rectangle(57, 50, 63, 121)).minus(crown).area()).isLessThan(0.1);
        assertThat(crown.minus(veil).area()).isLessThan(0.1);
    }

    @Test
    void aCrownThatRunsOffTheSheetIsClosedAlongItsEdge() {
        Region<SheetPoint> veil = enclosed(lines(arc(0, 75, 20, -90, 90)), List.of());
        assertThat(veil.area()).isCloseTo(200 * Math.PI, within(1.5));
    }

    @Test
    void whatIsNotClosedIsNotFilled() {
        assertThat(enclosed(lines(arc(60, 60, 20, 10, 350)), List.of()).isEmpty())
                .isTrue();
        // the wall ends before it meets the crown's lower end
        Region<SheetPoint> leaking = enclosed(lines(arc(60, 60, 20, -90, 90)), lines(line(60, 30, 60, 70)));
        assertThat(leaking.isEmpty()).isTrue();
        assertThat(enclosed(List.of(), lines(box(10, 10, 20, 20))).isEmpty()).isTrue();
    }

    @Test
    void aWallPartlyHiddenIsClosedAlongWhatHidesIt() {
        List<VectorPath<SheetPoint>> wall = lines(line(30, 80, 30, 40), line(30, 40, 80, 40), line(80, 40, 80, 80));
        assertThat(overlap(enclosed(wall, lines(line(10, 80, 120, 80))), rectangle(30, 40, 80, 80)))
                .isGreaterThan(0.999);
    }

    @Test
    void stemsComeOffAndTipsStay() {
        Region<SheetPoint> crown = disc(60, 40, 18);
        Region<SheetPoint> tip = Region.evenOdd(line(60, 23, 60, 40, 90, 26), 0.01);
        Region<SheetPoint> tree = crown.union(tip).union(rectangle(58, 50, 62, 100));
        Region<SheetPoint> left = Veils.withoutStems(tree.union(rectangle(120, 20, 122, 90)));
        assertThat(overlap(left, crown.union(tip))).isGreaterThan(0.99);
        assertThat(Veils.withoutStems(crown)).isEqualTo(crown);
    }

    private static List<VectorPath<SheetPoint>> hiddenBy(Region<SheetPoint> region, VectorPath<SheetPoint> path) {
        return lines(region.clipAway(path, 0.01));
    }
}
