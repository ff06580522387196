package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;

/** Some of the faces between lines, as a region. */
final class FaceSet {
    /** Less than a grid step: corners that only cut a straight line in two go. */
    private static final double STRAIGHT_MM = 0.8 / LineGraph.STEPS_PER_MM;

    private FaceSet() {}

    /** What the chosen faces cover between them. */
    static Region<SheetPoint> region(Faces faces, BitSet chosen) {
        GeometryFactory maker = new GeometryFactory();
        List<Geometry> bounds = new ArrayList<>();
        for (int side = 0; side < faces.sides(); side += 2) {
            if (chosen.get(faces.face(side)) != chosen.get(faces.face(side + 1))) {
                bounds.add(maker.createLineString(
                        new Coordinate[] {at(faces.graph(), faces.start(side)), at(faces.graph(), faces.start(side + 1))
                        }));
            }
        }
        // brought into a standing order, as the library gives the pieces in another one in each run
        // every corner has an even number of bounds: inside and outside take turns
        Polygonizer polygons = new Polygonizer(true);
        polygons.add(bounds);
        return Region.ofPolygons(
                Space.SHEET, straightened(polygons.getGeometry().norm()));
    }

    /** Piece by piece: the time for all at once grows with the square of their number. */
    private static Geometry straightened(Geometry all) {
        List<Geometry> pieces = new ArrayList<>();
        for (int k = 0; k < all.getNumGeometries(); k++) {
            pieces.add(TopologyPreservingSimplifier.simplify(all.getGeometryN(k), STRAIGHT_MM));
        }
        return all.getFactory().buildGeometry(pieces);
    }

    private static Coordinate at(LineGraph graph, int corner) {
        return new Coordinate(graph.xMm(corner), graph.yMm(corner));
    }
}
