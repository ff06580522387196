package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.junit.jupiter.api.Test;

class VanishingSearchTest {
    private static final SheetPoint PRINCIPAL = new SheetPoint(184, 181);

    @Property(tries = 25, seed = "20260103")
    void aOnePointViewMeetsAtThePrincipalPoint(
            @ForAll @IntRange(min = 1, max = 10_000) int seed,
            @ForAll @DoubleRange(min = 180, max = 400) double focal) {
        View view = new View(focal, PRINCIPAL, 1.55, 0);
        List<VanishingPoint> found = VanishingSearch.of(new DrawnEdges(seed, view).draw(300));
        assertThat(found.get(0).at().distanceTo(PRINCIPAL))
                .isLessThan(0.1 + 4 * found.get(0).yErrorMm());
        assertThat(ViewCheck.of(view, found)).isEmpty();
    }

    @Property(tries = 25, seed = "20260104")
    void aTwoPointViewTellsTurnAndFocalLength(
            @ForAll @IntRange(min = 1, max = 10_000) int seed,
            @ForAll @DoubleRange(min = 20, max = 70) double turnDeg) {
        View view = new View(300, PRINCIPAL, 1.55, Math.toRadians(turnDeg));
        List<VanishingPoint> found = VanishingSearch.of(new DrawnEdges(seed, view).draw(300));
        List<VanishingPoint> level = ViewCheck.onHorizon(found, PRINCIPAL.y());
        assertThat(level).hasSizeGreaterThanOrEqualTo(2);
        TwoPoints told = TwoPoints.of(PRINCIPAL.x(), level.get(0), level.get(1)).orElseThrow();
        assertThat(told.focalMm()).isCloseTo(300, within(3.0));
        double turn = Math.toDegrees(told.turn());
        assertThat(Math.min(Math.abs(turn - turnDeg), Math.abs(turn + 90 - turnDeg)))
                .isLessThan(0.5);
        assertThat(ViewCheck.of(view, found)).isEmpty();
    }

    @Test
    void linesAtRandomMeetNowhere() {
        for (int seed = 0; seed < 20; seed++) {
            Random random = new Random(seed);
            List<VectorPath<SheetPoint>> lines = new ArrayList<>();
            for (int k = 0; k < 200; k++) {
                VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
                double x = 400 * random.nextDouble();
                double y = 280 * random.nextDouble();
                path.moveTo(x, y);
                path.lineTo(x + 60 * random.nextGaussian(), y + 60 * random.nextGaussian());
                lines.add(path.build());
            }
            assertThat(VanishingSearch.of(lines)).isEmpty();
        }
    }

    @Test
    void noLinesNoPoint() {
        assertThat(VanishingSearch.of(List.of())).isEmpty();
    }

    @Test
    void aStatedCameraThatIsTurnedOtherwiseIsToldWithBothFigures() {
        View view = new View(300, PRINCIPAL, 1.55, Math.toRadians(30));
        List<VanishingPoint> found = VanishingSearch.of(new DrawnEdges(3, view).draw(300));
        View stated = new View(300, PRINCIPAL, 1.55, Math.toRadians(40));
        assertThat(ViewCheck.of(stated, found).orElseThrow().text()).contains("a turn of 30.0 deg");
        View tooLong = new View(360, PRINCIPAL, 1.55, Math.toRadians(30));
        assertThat(ViewCheck.of(tooLong, found).orElseThrow().text()).contains("a focal length of 30");
    }
}
