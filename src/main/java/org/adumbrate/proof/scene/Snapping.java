package org.adumbrate.proof.scene;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.json.Json;

/** To what a point snaps: the nearest end or crossing of lines within reach, or else the nearest point of a line. */
final class Snapping {
    /** So many lines at one place are a hatch or a scribble, of which no crossing is meant. */
    private static final int MOST_LINES = 400;

    private final SheetPoint point;
    private final double reach;
    private String kind = "";
    private Optional<SheetPoint> best = Optional.empty();

    private Snapping(SheetPoint point, double reach) {
        this.point = point;
        this.reach = reach;
    }

    /** Kind and place; an empty object where there is no line within reach. */
    static Map<String, Object> of(Sketch sketch, SheetPoint point, double reach) {
        Snapping snapping = new Snapping(point, reach);
        List<SketchLine> segments = sketch.segments(point, reach);
        sketch.lines(point, reach).forEach(path -> path.pieces(snapping.ends()));
        if (segments.size() <= MOST_LINES) {
            snapping.crossings(segments);
        }
        if (snapping.best.isEmpty()) {
            segments.forEach(segment -> snapping.take("line", segment.nearest(point)));
        }
        return snapping.best
                .map(at -> Json.object("kind", snapping.kind, "at", SheetPoints.json(at)))
                .orElseGet(Json::object);
    }

    private void take(String what, SheetPoint at) {
        double distance = SketchLine.distance(point, at);
        if (distance <= reach && (best.isEmpty() || distance < SketchLine.distance(point, best.get()))) {
            kind = what;
            best = Optional.of(at);
        }
    }

    /** Ends of pieces, and so corners too; not the ends of the chords of a curve. */
    private PieceVisitor ends() {
        return new PieceVisitor() {
            @Override
            public void begin(double x, double y) {
                take("end", new SheetPoint(x, y));
            }

            @Override
            public void piece(PathPiece piece) {
                take("end", new SheetPoint(piece.x3(), piece.y3()));
            }
        };
    }

    private void crossings(List<SketchLine> segments) {
        for (int k = 0; k < segments.size(); k++) {
            for (int n = 0; n < k; n++) {
                segments.get(k).crossing(segments.get(n)).ifPresent(at -> take("crossing", at));
            }
        }
    }
}
