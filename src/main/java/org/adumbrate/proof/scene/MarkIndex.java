package org.adumbrate.proof.scene;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.adumbrate.drawing.Mark;
import org.adumbrate.geometry.BoxIndex;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * A mark by where it is.
 *
 * @param mark the mark
 * @param paths its lines, or the outline of its area
 * @param boxes where each of them is
 */
record MarkIndex(Mark mark, List<VectorPath<SheetPoint>> paths, BoxIndex boxes) {
    /** How far a chord may lie from its curve, in mm: less than a hand can point. */
    static final double TOLERANCE_MM = 0.02;

    private static final Extent NOWHERE = new Extent(0, 0, 0, 0);

    static MarkIndex of(Mark mark) {
        List<VectorPath<SheetPoint>> paths = mark instanceof Mark.Lines lines
                ? lines.paths()
                : List.of(((Mark.Area) mark).region().outline());
        return new MarkIndex(
                mark,
                paths,
                BoxIndex.of(paths.stream()
                        .map(path -> path.extent().orElse(NOWHERE))
                        .toList()));
    }

    /** Those of the paths that come near a point. */
    List<VectorPath<SheetPoint>> near(SheetPoint point, double reach) {
        return Arrays.stream(boxes.touching(point.x() - reach, point.y() - reach, point.x() + reach, point.y() + reach))
                .mapToObj(paths::get)
                .toList();
    }

    /** True if something of it is seen within reach of a point. */
    boolean isAt(SheetPoint point, double reach) {
        if (mark instanceof Mark.Area area) {
            return area.opacity() > 0 && area.region().contains(point);
        }
        double within = reach + ((Mark.Lines) mark).pen().widthMm() / 2;
        return near(point, within).stream().anyMatch(path -> isWithin(path, point, within));
    }

    /** True if it hides what lies below it there. */
    boolean hides() {
        return mark instanceof Mark.Area area && area.opacity() == 1;
    }

    private static boolean isWithin(VectorPath<SheetPoint> path, SheetPoint point, double reach) {
        boolean[] found = {false};
        path.chords(
                TOLERANCE_MM,
                (x0, y0, x1, y1) -> found[0] |= new SketchLine(x0, y0, x1, y1).distanceTo(point) <= reach);
        return found[0];
    }

    /** The box around all of it. */
    Optional<Extent> extent() {
        return paths.stream().flatMap(path -> path.extent().stream()).reduce(Extent::with);
    }
}
