package org.adumbrate.preflight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.preflight.Observations.Advice;

/** Whether lines and hatch can be read on the tones that they lie on. */
final class ToneRule implements Rule {
    /** Paper that sends back less light than this leaves black lines little to stand out from; common practice. */
    private static final double DARK = 0.25;

    /** So much of the line may lie there. */
    private static final double SHARE = 0.1;

    private static final double STEP_MM = 1;

    /** Where it is darkest is told by fields of this size. */
    private static final double FIELD_MM = 20;

    private static final int TOLD = 3;

    @Override
    public void look(CheckedSheet sheet, Observations found) {
        if (sheet.picture().isEmpty()) {
            return;
        }
        Walk walk = new Walk(sheet.picture().get());
        sheet.layers().stream()
                .filter(Layer::shown)
                .flatMap(layer -> layer.marks().stream())
                .forEach(mark -> {
                    if (mark instanceof Mark.Lines lines) {
                        lines.paths().forEach(path -> path.pieces(walk));
                    }
                });
        if (walk.dark > SHARE * walk.all) {
            found.add(
                    Severity.WARNING,
                    "passes",
                    walk.darkest(),
                    String.format(
                            Locale.ROOT,
                            "%.0f %% of all line lies where the paper sends back less than a quarter of its light",
                            100.0 * walk.dark / walk.all),
                    new Advice(
                            "lines and hatch drown in tones so dark, and dots of the printer fill in",
                            "lower the opacity of shadow or occlusion, or lift the dark with tone: [[0, 25], [100, 100]]"));
        }
    }

    private static final class Walk implements PieceVisitor {
        private final TonePicture picture;
        private final Map<SheetPoint, Integer> fields = new HashMap<>();
        private int all;
        private int dark;

        Walk(TonePicture picture) {
            this.picture = picture;
        }

        List<SheetPoint> darkest() {
            List<Map.Entry<SheetPoint, Integer>> sorted = new ArrayList<>(fields.entrySet());
            sorted.sort(Map.Entry.<SheetPoint, Integer>comparingByValue()
                    .reversed()
                    .thenComparing(entry -> entry.getKey().y())
                    .thenComparing(entry -> entry.getKey().x(), Comparator.naturalOrder()));
            return sorted.stream().limit(TOLD).map(Map.Entry::getKey).toList();
        }

        @Override
        public void piece(PathPiece piece) {
            int steps = (int) Math.min(10_000, piece.reach() / STEP_MM);
            for (int k = 0; k <= steps; k++) {
                double share = (k + 0.5) / (steps + 1);
                look(new SheetPoint(piece.xAt(share), piece.yAt(share)));
            }
        }

        private void look(SheetPoint point) {
            all++;
            if (picture.luminance(point) < DARK) {
                dark++;
                SheetPoint field = new SheetPoint(
                        (Math.floor(point.x() / FIELD_MM) + 0.5) * FIELD_MM,
                        (Math.floor(point.y() / FIELD_MM) + 0.5) * FIELD_MM);
                fields.merge(field, 1, Integer::sum);
            }
        }
    }
}
