package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Stroke;
import org.junit.jupiter.api.Test;

class HeightLinesTest {
    private static final Srgb RED = new Srgb(230, 0, 40);

    private static Stroke stroke(Srgb color, double... points) {
        VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
        path.moveTo(points[0], points[1]);
        for (int k = 2; k < points.length; k += 2) {
            path.lineTo(points[k], points[k + 1]);
        }
        return new Stroke(path.build(), color, 0.2, Dash.NONE, LineCap.BUTT, LineJoin.MITER, Optional.empty());
    }

    private static List<HeightLine> picked(Stroke... strokes) throws Refusal {
        return HeightLines.of(List.of(strokes), RED, Affine.scaling(Space.PAGE, Space.SHEET, 1, 1));
    }

    private static HeightLine line(double footX, double footY, double headX, double headY) {
        return new HeightLine(new SheetPoint(footX, footY), new SheetPoint(headX, headY));
    }

    @Test
    void takesUprightsOfTheColourHowEverTheyRun() throws Refusal {
        assertThat(picked(
                        stroke(RED, 10, 50, 10, 30),
                        stroke(new Srgb(228, 3, 44), 20, 30, 20.2, 52),
                        stroke(new Srgb(220, 0, 40), 30, 30, 30, 52),
                        stroke(RED, 40, 30, 60, 30)))
                .containsExactly(line(10, 50, 10, 30), line(20.2, 52, 20, 30));
    }

    @Test
    void joinsBrokenLines() throws Refusal {
        assertThat(picked(stroke(RED, 10, 42, 10, 50), stroke(RED, 10, 30, 10, 35.002), stroke(RED, 10, 42.08, 10, 35)))
                .containsExactly(line(10, 50, 10, 30));
    }

    @Test
    void dropsRepeatsAndCrumbs() throws Refusal {
        assertThat(picked(
                        stroke(RED, 10, 50, 10, 30),
                        stroke(RED, 10, 30, 10, 50),
                        stroke(RED, 10.05, 45, 10.05, 33),
                        stroke(RED, 70, 30.1, 70, 30)))
                .containsExactly(line(10, 50, 10, 30));
    }

    @Test
    void keepsLinesThatStandOneBehindTheOther() throws Refusal {
        assertThat(picked(
                        stroke(RED, 10, 50, 10, 30),
                        stroke(RED, 10, 45, 10, 28),
                        stroke(RED, 10, 22, 10, 12),
                        stroke(RED, 11, 50, 11, 30)))
                .hasSize(4);
    }

    @Test
    void onePathMayHoldSeveral() throws Refusal {
        assertThat(picked(stroke(RED, 10, 50, 10, 30, 25, 30, 25, 50))).hasSize(2);
    }

    @Test
    void refusesAWholeDrawing() {
        List<Stroke> strokes = new ArrayList<>();
        for (int k = 0; k < 20_001; k++) {
            strokes.add(stroke(RED, k, 50, k, 30));
        }
        assertThatThrownBy(() -> HeightLines.of(strokes, RED, Affine.scaling(Space.PAGE, Space.SHEET, 1, 1)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("check the colour");
    }
}
