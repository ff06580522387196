package org.adumbrate.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;

/** Compares a drawing that has been read again with what was written. */
final class RoundTrip {
    private static final double MICROMETRE = 1e-3;

    private RoundTrip() {}

    /** Fails unless the sheet holds the runs of layers of lines, each on its layer and as its pen draws. */
    static void assertHolds(LineSheet sheet, List<Layer> drawn) {
        List<String> layers = new ArrayList<>();
        sheet.strokes().forEach(stroke -> layers.add(stroke.layer().orElseThrow()));
        assertThat(layers.stream().distinct())
                .containsExactlyElementsOf(drawn.stream().map(Layer::name).toList());
        for (Layer layer : drawn) {
            Mark.Lines lines = (Mark.Lines) layer.marks().get(0);
            List<Stroke> strokes = sheet.strokes().stream()
                    .filter(stroke -> stroke.layer().orElseThrow().equals(layer.name()))
                    .toList();
            strokes.forEach(stroke -> assertPen(stroke, lines.pen()));
            Steps found = new Steps();
            strokes.forEach(stroke -> stroke.path().visit(found));
            Steps expected = new Steps();
            lines.paths().forEach(path -> path.visit(expected));
            assertThat(found.kinds.toString()).isEqualTo(expected.kinds.toString());
            assertThat(found.coordinates).hasSameSizeAs(expected.coordinates);
            for (int k = 0; k < found.coordinates.size(); k++) {
                assertThat(found.coordinates.get(k)).isCloseTo(expected.coordinates.get(k), within(MICROMETRE));
            }
        }
    }

    private static void assertPen(Stroke stroke, Pen pen) {
        assertThat(stroke.color()).isEqualTo(pen.ink());
        assertThat(stroke.widthMm()).isCloseTo(pen.widthMm(), within(MICROMETRE / 10));
        assertThat(stroke.cap()).isEqualTo(pen.cap());
        assertThat(stroke.join()).isEqualTo(pen.join());
        assertThat(stroke.dash().lengthsMm()).hasSameSizeAs(pen.dash().lengthsMm());
        for (int k = 0; k < pen.dash().lengthsMm().size(); k++) {
            assertThat(stroke.dash().lengthsMm().get(k))
                    .isCloseTo(pen.dash().lengthsMm().get(k), within(MICROMETRE / 10));
        }
        assertThat(stroke.dash().phaseMm()).isCloseTo(pen.dash().phaseMm(), within(MICROMETRE / 10));
    }

    /** The steps of several paths in a row. */
    private static final class Steps implements VectorPath.Visitor {
        private final StringBuilder kinds = new StringBuilder();
        private final List<Double> coordinates = new ArrayList<>();

        @Override
        public void moveTo(double x, double y) {
            add('M', x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            add('L', x, y);
        }

        @Override
        public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
            add('C', x1, y1, x2, y2, x, y);
        }

        @Override
        public void close() {
            add('Z');
        }

        private void add(char kind, double... values) {
            kinds.append(kind);
            for (double value : values) {
                coordinates.add(value);
            }
        }
    }
}
