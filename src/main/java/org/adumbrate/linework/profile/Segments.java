package org.adumbrate.linework.profile;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.locationtech.jts.geom.Coordinate;

/** Takes paths apart into straight pieces, curves as short chords that begin and end on them. */
final class Segments implements VectorPath.Visitor {
    private static final int CHORDS = 16;

    private final List<Segment> segments;
    private final Segment.Kind kind;
    private Coordinate start = new Coordinate();
    private Coordinate at = start;

    private Segments(List<Segment> segments, Segment.Kind kind) {
        this.segments = segments;
        this.kind = kind;
    }

    static void add(List<VectorPath<SheetPoint>> paths, Segment.Kind kind, List<Segment> to) {
        Segments segments = new Segments(to, kind);
        paths.forEach(path -> path.visit(segments));
    }

    static List<Segment> of(List<VectorPath<SheetPoint>> building, List<VectorPath<SheetPoint>> cut) {
        List<Segment> all = new ArrayList<>();
        add(building, Segment.Kind.BUILDING, all);
        add(cut, Segment.Kind.CUT, all);
        return all;
    }

    @Override
    public void moveTo(double x, double y) {
        start = new Coordinate(x, y);
        at = start;
    }

    @Override
    public void lineTo(double x, double y) {
        go(new Coordinate(x, y));
    }

    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
        Coordinate from = at;
        for (int n = 1; n < CHORDS; n++) {
            double t = (double) n / CHORDS;
            double s = 1 - t;
            double a = s * s * s;
            double b = 3 * s * s * t;
            double c = 3 * s * t * t;
            double d = t * t * t;
            go(new Coordinate(a * from.x + b * x1 + c * x2 + d * x, a * from.y + b * y1 + c * y2 + d * y));
        }
        go(new Coordinate(x, y));
    }

    @Override
    public void close() {
        go(start);
    }

    private void go(Coordinate to) {
        if (!to.equals2D(at)) {
            segments.add(Segment.of(at, to, kind));
            at = to;
        }
    }
}
