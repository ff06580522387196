package org.adumbrate.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.index.strtree.STRtree;

/** Rings that do not cross put together to polygons, each hole in the smallest ring around it. */
final class NestedRings {
    private static final GeometryFactory MAKER = new GeometryFactory();

    private final List<Shell> shells = new ArrayList<>();
    private final STRtree index = new STRtree();

    private NestedRings() {}

    /** The polygons; rings that have clockwise the greater share, as seen with y down, are holes. */
    static Geometry polygons(List<Coordinate[]> rings) {
        NestedRings nested = new NestedRings();
        List<LinearRing> holes = new ArrayList<>();
        for (Coordinate[] ring : rings) {
            double area = Area.ofRingSigned(ring);
            if (area > 0) {
                nested.shell(MAKER.createLinearRing(ring), area);
            } else if (area < 0) {
                holes.add(MAKER.createLinearRing(ring));
            }
        }
        holes.forEach(nested::hole);
        Geometry all = MAKER.createMultiPolygon(
                nested.shells.stream().map(Shell::polygon).toArray(Polygon[]::new));
        return all.isValid() ? all : GeometryFixer.fix(all);
    }

    private void shell(LinearRing ring, double area) {
        Shell shell = new Shell(ring, area);
        shells.add(shell);
        index.insert(ring.getEnvelopeInternal(), shell);
    }

    private void hole(LinearRing hole) {
        Shell around = null;
        Envelope box = hole.getEnvelopeInternal();
        for (Object found : index.query(box)) {
            Shell shell = (Shell) found;
            if ((around == null || shell.area < around.area)
                    && shell.ring.getEnvelopeInternal().contains(box)
                    && shell.holds(hole)) {
                around = shell;
            }
        }
        if (around != null) {
            around.holes.add(hole);
        }
    }

    private static final class Shell {
        private final LinearRing ring;
        private final double area;
        private final List<LinearRing> holes = new ArrayList<>();
        private IndexedPointInAreaLocator locator;

        Shell(LinearRing ring, double area) {
            this.ring = ring;
            this.area = area;
        }

        /** Whether a hole lies in it; told by the first of the hole's corners that is not on the ring. */
        boolean holds(LinearRing hole) {
            if (locator == null) {
                locator = new IndexedPointInAreaLocator(ring);
            }
            for (int k = 0; k < hole.getNumPoints(); k++) {
                int location = locator.locate(hole.getCoordinateN(k));
                if (location != Location.BOUNDARY) {
                    return location == Location.INTERIOR;
                }
            }
            return false;
        }

        Polygon polygon() {
            return MAKER.createPolygon(ring, holes.toArray(new LinearRing[0]));
        }
    }
}
