package org.adumbrate.linework.profile;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.locationtech.jts.geom.Coordinate;

/** Takes paths apart into straight pieces, curves as chords that begin and end on them. */
final class Segments {
    /** How far a curve may lie from its chords, in mm: less than a printed dot. */
    private static final double TOLERANCE_MM = 0.01;

    private Segments() {}

    static void add(List<VectorPath<SheetPoint>> paths, ProfileSegment.Kind kind, List<ProfileSegment> to) {
        for (VectorPath<SheetPoint> path : paths) {
            path.chords(TOLERANCE_MM, (x0, y0, x1, y1) -> {
                if (x0 != x1 || y0 != y1) {
                    to.add(ProfileSegment.of(new Coordinate(x0, y0), new Coordinate(x1, y1), kind));
                }
            });
        }
    }

    static List<ProfileSegment> of(List<VectorPath<SheetPoint>> building, List<VectorPath<SheetPoint>> cut) {
        List<ProfileSegment> all = new ArrayList<>();
        add(building, ProfileSegment.Kind.BUILDING, all);
        add(cut, ProfileSegment.Kind.CUT, all);
        return all;
    }
}
