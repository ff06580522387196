package org.adumbrate.proof.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.drawing.Pen;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.junit.jupiter.api.Test;

class SketchTest {
    private static final VectorPath<SheetPoint> CROSS =
            VectorPath.in(Space.SHEET).build();

    private static VectorPath<SheetPoint> line(double x0, double y0, double x1, double y1) {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(x0, y0);
        path.lineTo(x1, y1);
        return path.build();
    }

    private static Mark lines(String key, VectorPath<SheetPoint> path) {
        return new Mark.Lines(key, Pen.round(0.5, Srgb.BLACK), List.of(path, CROSS));
    }

    private static Mark area(String key, double opacity, double left, double right) {
        return new Mark.Area(key, Srgb.WHITE, opacity, Region.rectangle(Space.SHEET, left, 0, right, 20));
    }

    private static Sketch sketch(Mark... marks) {
        return Sketch.of(List.of(Layer.of("all", List.of(marks))), Sketch.NOTHING);
    }

    private static SheetPoint point(double x, double y) {
        return new SheetPoint(x, y);
    }

    @Test
    void theTopmostComesFirstAndWhatCoversHides() {
        Sketch sketch = sketch(
                lines("pens.a", line(0, 10, 100, 10)),
                area("veils.glass", 0.4, 0, 50),
                lines("pens.b", line(10, 0, 10, 20)),
                area("figures[0]", 1, 30, 50));
        assertThat(sketch.at(point(10, 10), 0.1)).containsExactly("pens.b", "veils.glass", "pens.a");
        assertThat(sketch.at(point(40, 10), 0.1)).containsExactly("figures[0]");
        assertThat(sketch.at(point(70, 10.6), 0.3))
                .as("half the pen's width is the line's")
                .isEmpty();
        assertThat(sketch.at(point(70, 10.5), 0.3)).containsExactly("pens.a");
    }

    @Test
    void whatIsSwitchedOffIsNotThere() {
        Layer hidden = Layer.of("heights", List.of(lines("heights", line(0, 10, 100, 10))))
                .hidden();
        assertThat(Sketch.of(List.of(hidden), Sketch.NOTHING).marks()).isEmpty();
    }

    @Test
    void marksThatStayAreNotLookedAtAgain() {
        Mark stays = lines("pens.a", line(0, 10, 100, 10));
        Sketch first = sketch(stays, lines("pens.b", line(0, 0, 1, 1)));
        Sketch second = Sketch.of(List.of(Layer.of("all", List.of(stays))), first);
        assertThat(second.marks().get(0)).isSameAs(first.marks().get(0));
    }

    @Test
    void aShapeIsOfAKeyAndOfAllBelowIt() {
        Sketch sketch = sketch(lines("cut.outline", line(0.004, 10, -1.5, 10.25)), lines("cutter", line(5, 5, 6, 6)));
        assertThat(sketch.shape("cut")).isEqualTo("M0 10L-1.5 10.25");
        assertThat(sketch.shape("pens")).isEmpty();
        assertThat(sketch.extent("cut").orElseThrow().left()).isEqualTo(-1.5);
    }

    private static Map<String, Object> snap(Sketch sketch, double x, double y) {
        return Snapping.of(sketch, point(x, y), 2);
    }

    @Test
    void endsAndCrossingsComeBeforeLines() {
        Sketch sketch = sketch(lines("a", line(0, 10, 100, 10)), lines("b", line(30, 0, 30, 20)));
        assertThat(snap(sketch, 1, 11)).containsEntry("kind", "end").containsEntry("at", List.of(0.0, 10.0));
        assertThat(snap(sketch, 31, 9)).containsEntry("kind", "crossing").containsEntry("at", List.of(30.0, 10.0));
        assertThat(snap(sketch, 50, 11.5)).containsEntry("kind", "line").containsEntry("at", List.of(50.0, 10.0));
        assertThat(snap(sketch, 50, 15)).isEmpty();
    }

    @Test
    void theChordsOfACurveAreNoCrossings() {
        VectorPath.Builder<SheetPoint> curve = VectorPath.in(Space.SHEET);
        curve.moveTo(0, 0);
        curve.curveTo(0, 50, 100, 50, 100, 0);
        assertThat(snap(sketch(lines("a", curve.build())), 50, 38)).containsEntry("kind", "line");
    }
}
