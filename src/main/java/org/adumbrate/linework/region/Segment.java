package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;

/**
 * A straight piece of a line, in mm of the sheet.
 *
 * @param kind what it belongs to
 * @param isDrawn false if it is supposed, to close a gap
 */
record Segment(double x0, double y0, double x1, double y1, Kind kind, boolean isDrawn) {
    private static final double CURVE_TOLERANCE_MM = 0.01;

    /** A piece that is drawn. */
    Segment(double x0, double y0, double x1, double y1, Kind kind) {
        this(x0, y0, x1, y1, kind, true);
    }

    /** The straight pieces of paths, as far as they lie on the sheet. */
    static List<Segment> of(List<VectorPath<SheetPoint>> paths, SheetSize page, Kind kind) {
        List<Segment> segments = new ArrayList<>();
        for (VectorPath<SheetPoint> path : paths) {
            path.chords(CURVE_TOLERANCE_MM, (x0, y0, x1, y1) -> {
                Segment segment = new Segment(x0, y0, x1, y1, kind).within(page);
                if (segment.length() > 0) {
                    segments.add(segment);
                }
            });
        }
        return segments;
    }

    /** The four edges of the sheet. */
    static List<Segment> border(SheetSize page) {
        double w = page.widthMm();
        double h = page.heightMm();
        return List.of(
                new Segment(0, 0, w, 0, Kind.BORDER),
                new Segment(w, 0, w, h, Kind.BORDER),
                new Segment(w, h, 0, h, Kind.BORDER),
                new Segment(0, h, 0, 0, Kind.BORDER));
    }

    double length() {
        return Math.hypot(x1 - x0, y1 - y0);
    }

    /** The part within the sheet, of no length if there is none (Liang and Barsky 1984). */
    private Segment within(SheetSize page) {
        double dx = x1 - x0;
        double dy = y1 - y0;
        double[] towards = {-dx, dx, -dy, dy};
        double[] room = {x0, page.widthMm() - x0, y0, page.heightMm() - y0};
        double enter = 0;
        double leave = 1;
        for (int side = 0; side < 4; side++) {
            if (towards[side] == 0 && room[side] < 0) {
                leave = 0;
            } else if (towards[side] < 0) {
                enter = Math.max(enter, room[side] / towards[side]);
            } else if (towards[side] > 0) {
                leave = Math.min(leave, room[side] / towards[side]);
            }
        }
        if (enter == 0 && leave == 1) {
            return this;
        }
        double last = Math.max(enter, leave);
        return new Segment(x0 + enter * dx, y0 + enter * dy, x0 + last * dx, y0 + last * dy, kind, isDrawn);
    }
}
