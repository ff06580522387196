package org.adumbrate.linework.dashes;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.adumbrate.geometry.BoxIndex;
import org.adumbrate.geometry.Extent;
import org.adumbrate.linework.Stroke;

/** Tells which ends of dashes lie on other lines, as those of bars and joints do and those of dashes do not but by chance. */
final class TouchedEnds {
    /** What is as near as this touches, in mm. */
    private static final double TOUCH_MM = 0.03;

    /** Lines that run along a dash to within this angle do not bound it. */
    private static final double ACROSS = Math.sin(Math.toRadians(10));

    private static final double FLATNESS_MM = 0.01;

    private final DashRuns runs;
    private final int[] ends;
    private final BoxIndex index;
    private final boolean[] touched;

    /** The box around all ends: nearly all strokes lie apart from it where a sheet has but a few rows. */
    private final Extent around;

    private TouchedEnds(DashRuns runs, List<Rows.Part> parts) {
        this.runs = runs;
        this.ends = parts.stream()
                .flatMapToInt(part -> IntStream.of(part.innerEnds()))
                .toArray();
        this.touched = new boolean[2 * runs.size()];
        List<Extent> boxes = new ArrayList<>();
        for (int end : ends) {
            double x = runs.x(end);
            double y = runs.y(end);
            boxes.add(new Extent(x, y, x, y).grown(TOUCH_MM));
        }
        this.index = BoxIndex.of(boxes);
        this.around = boxes.stream().reduce(Extent::with).orElseThrow();
    }

    /** The parts of which not more than half the inner ends lie on strokes that run across. */
    static List<Rows.Part> free(DashRuns runs, List<Rows.Part> parts, List<Stroke> strokes) {
        if (parts.isEmpty()) {
            return parts;
        }
        TouchedEnds ends = new TouchedEnds(runs, parts);
        for (int k = 0; k < runs.size(); k++) {
            if (runs.isStraight(k)) {
                ends.look(runs.x(2 * k), runs.y(2 * k), runs.x(2 * k + 1), runs.y(2 * k + 1));
            }
        }
        runs.others().stream().forEach(k -> strokes.get(k).path().chords(FLATNESS_MM, ends::look));
        return parts.stream().filter(ends::isFree).toList();
    }

    private void look(double x0, double y0, double x1, double y1) {
        if (Math.max(x0, x1) < around.left()
                || Math.min(x0, x1) > around.right()
                || Math.max(y0, y1) < around.top()
                || Math.min(y0, y1) > around.bottom()) {
            return;
        }
        int[] near = index.touching(
                Math.min(x0, x1) - 1e-9, Math.min(y0, y1) - 1e-9, Math.max(x0, x1) + 1e-9, Math.max(y0, y1) + 1e-9);
        double length = Math.hypot(x1 - x0, y1 - y0);
        for (int k = 0; k < near.length && length > 0; k++) {
            int end = ends[near[k]];
            double ux = (x1 - x0) / length;
            double uy = (y1 - y0) / length;
            double dx = runs.x(end) - x0;
            double dy = runs.y(end) - y0;
            double along = Math.max(0, Math.min(length, ux * dx + uy * dy));
            boolean across = Math.abs(ux * runs.outY(end) - uy * runs.outX(end)) > ACROSS;
            touched[end] |= across && Math.hypot(dx - along * ux, dy - along * uy) <= TOUCH_MM;
        }
    }

    private boolean isFree(Rows.Part part) {
        int free = 0;
        for (int end : part.innerEnds()) {
            free += touched[end] ? -1 : 1;
        }
        return free >= 0;
    }
}
