package org.adumbrate.proof.scene;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * All that is drawn, to be found by place and by key. Never changed.
 *
 * @param marks from the lowest up, without what is switched off
 */
record Sketch(List<MarkIndex> marks) {
    static final Sketch NOTHING = new Sketch(List.of());

    /** More path data than that makes a browser slow, in chars. */
    private static final int MOST_DATA = 200_000;

    /** Of the layers of a sheet; marks that are the same objects in the sketch before are not looked at again. */
    static Sketch of(List<Layer> layers, Sketch before) {
        IdentityHashMap<Mark, MarkIndex> known = new IdentityHashMap<>();
        before.marks.forEach(index -> known.put(index.mark(), index));
        List<MarkIndex> marks = new ArrayList<>();
        for (Layer layer : layers) {
            if (layer.shown()) {
                for (Mark mark : layer.marks()) {
                    MarkIndex index = known.get(mark);
                    marks.add(index == null ? MarkIndex.of(mark) : index);
                }
            }
        }
        return new Sketch(marks);
    }

    /** The keys of what is seen within reach of a point, the topmost first. */
    Set<String> at(SheetPoint point, double reach) {
        Set<String> keys = new LinkedHashSet<>();
        for (int k = marks.size() - 1; k >= 0; k--) {
            MarkIndex index = marks.get(k);
            if (index.isAt(point, reach)) {
                if (!index.mark().key().isEmpty()) {
                    keys.add(index.mark().key());
                }
                if (index.hides()) {
                    return keys;
                }
            }
        }
        return keys;
    }

    /** The lines within reach of a point, in straight pieces. */
    List<SketchLine> segments(SheetPoint point, double reach) {
        List<SketchLine> segments = new ArrayList<>();
        for (MarkIndex index : marks) {
            if (index.mark() instanceof Mark.Lines) {
                for (VectorPath<SheetPoint> path : index.near(point, reach)) {
                    path.chords(MarkIndex.TOLERANCE_MM, (x0, y0, x1, y1) -> {
                        SketchLine segment = new SketchLine(x0, y0, x1, y1);
                        if (segment.distanceTo(point) <= reach) {
                            segments.add(segment);
                        }
                    });
                }
            }
        }
        return segments;
    }

    /** The lines that come near a point. */
    List<VectorPath<SheetPoint>> lines(SheetPoint point, double reach) {
        return marks.stream()
                .filter(index -> index.mark() instanceof Mark.Lines)
                .flatMap(index -> index.near(point, reach).stream())
                .toList();
    }

    private List<MarkIndex> of(String key) {
        return marks.stream().filter(index -> isOf(index.mark().key(), key)).toList();
    }

    /** True of a key path and of all below it. */
    static boolean isOf(String path, String key) {
        return path.equals(key) || path.startsWith(key + ".") || path.startsWith(key + "[");
    }

    /** The box around what a key, or any below it, draws. */
    Optional<Extent> extent(String key) {
        return of(key).stream().flatMap(index -> index.extent().stream()).reduce(Extent::with);
    }

    /** SVG path data of it, in mm; what would be too much is left out. */
    String shape(String key) {
        PathData data = new PathData();
        for (MarkIndex index : of(key)) {
            for (VectorPath<SheetPoint> path : index.paths()) {
                if (data.length() > MOST_DATA) {
                    return data.text();
                }
                path.visit(data);
            }
        }
        return data.text();
    }
}
