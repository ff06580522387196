package org.adumbrate.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateArrays;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.CoverageUnion;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * What closed runs enclose that may cross themselves and each other: they are cut where they cross, and of the faces between
 * them those are kept around which the runs wind as often as asked for (Sunday, "Inclusion of a point in a polygon", 2001).
 */
final class Winding {
    private static final GeometryFactory MAKER = new GeometryFactory();

    /** Looks at an edge for a face: some two seconds. A tree in leaf, of 1000 faces and 20000 edges, takes a tenth. */
    private static final long MOST_LOOKS = 1_000_000_000;

    /** By what each reaches over; a ring winds around nothing outside that. */
    private final STRtree rings = new STRtree();

    private long looks;

    private Winding(List<Coordinate[]> rings) {
        rings.forEach(ring -> this.rings.insert(CoordinateArrays.envelope(ring), ring));
    }

    /**
     * The faces whose winding number is asked for, joined.
     *
     * @param rings closed runs of at least four points, the first once more at the end
     * @param wanted tells of a winding number whether it counts as inside
     * @throws IllegalArgumentException if the runs cross too often
     */
    static Geometry faces(List<Coordinate[]> rings, IntPredicate wanted) {
        if (rings.isEmpty()) {
            return MAKER.createPolygon();
        }
        Crossings.requireFew(rings);
        return new Winding(rings).kept(rings, wanted);
    }

    private Geometry kept(List<Coordinate[]> rings, IntPredicate wanted) {
        LineString[] lines = rings.stream().map(MAKER::createLineString).toArray(LineString[]::new);
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(OverlayNGRobust.union(MAKER.createMultiLineString(lines)));
        List<Polygon> kept = new ArrayList<>();
        Collection<?> faces = polygonizer.getPolygons();
        for (Object found : faces) {
            Polygon face = (Polygon) found;
            if (wanted.test(around(face.getInteriorPoint().getCoordinate()))) {
                kept.add(face);
            }
        }
        // brought into a standing order, as the library gives the faces in another one in each run
        return CoverageUnion.union(MAKER.createMultiPolygon(kept.toArray(Polygon[]::new)))
                .norm();
    }

    private int around(Coordinate p) {
        int number = 0;
        for (Object found : rings.query(new Envelope(p))) {
            Coordinate[] ring = (Coordinate[]) found;
            looks += ring.length;
            Space.require(looks <= MOST_LOOKS, () -> "its lines enclose too many faces, at too many edges");
            for (int k = 1; k < ring.length; k++) {
                Coordinate a = ring[k - 1];
                Coordinate b = ring[k];
                if (a.y <= p.y != b.y <= p.y) {
                    double side = (b.x - a.x) * (p.y - a.y) - (p.x - a.x) * (b.y - a.y);
                    number += side > 0 == b.y > a.y ? b.y > a.y ? 1 : -1 : 0;
                }
            }
        }
        return number;
    }
}
