package org.adumbrate.linework.profile;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.coverage.CoverageUnion;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.LineStringExtracter;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** Pieces split where they meet, and what they enclose. */
final class Arrangement {
    /** In mm: what lies no farther apart meets. */
    private static final double MEET_MM = 0.005;

    /** In mm: how far from a region shrunk and grown again its former bounds may lie. */
    private static final double SLACK_MM = 0.02;

    private static final double SHARPEST_MITRE = 10;
    private static final GeometryFactory MAKER = new GeometryFactory();
    private static final BufferParameters SHARP = new BufferParameters(
            BufferParameters.DEFAULT_QUADRANT_SEGMENTS,
            BufferParameters.CAP_FLAT,
            BufferParameters.JOIN_MITRE,
            SHARPEST_MITRE);

    /** The edges, each with the lower end first, and whose they are. */
    private final Map<LineSegment, ProfileSegment.Kind> edges = new TreeMap<>();

    private Arrangement() {}

    /** Splits pieces where they meet; of edges that coincide one is kept. */
    static Arrangement of(List<ProfileSegment> segments) {
        List<SegmentString> strings = new ArrayList<>();
        for (ProfileSegment segment : segments) {
            Coordinate[] ends = {segment.line().p0.copy(), segment.line().p1.copy()};
            strings.add(new NodedSegmentString(ends, segment.kind()));
        }
        SnappingNoder noder = new SnappingNoder(MEET_MM);
        noder.computeNodes(strings);
        Arrangement arrangement = new Arrangement();
        for (Object string : noder.getNodedSubstrings()) {
            SegmentString part = (SegmentString) string;
            for (int n = 1; n < part.size(); n++) {
                LineSegment edge = edge(part.getCoordinate(n - 1), part.getCoordinate(n));
                arrangement.edges.merge(
                        edge, (ProfileSegment.Kind) part.getData(), (a, b) -> a.compareTo(b) <= 0 ? a : b);
            }
        }
        return arrangement;
    }

    private static LineSegment edge(Coordinate from, Coordinate to) {
        LineSegment edge = new LineSegment(from, to);
        edge.normalize();
        return edge;
    }

    /** What the edges enclose, as polygons whose sides are edges. */
    Geometry covered() {
        Polygonizer polygonizer = new Polygonizer();
        edges.keySet().forEach(edge -> polygonizer.add(MAKER.createLineString(new Coordinate[] {edge.p0, edge.p1})));
        Collection<?> faces = polygonizer.getPolygons();
        return faces.isEmpty()
                ? MAKER.createPolygon()
                : CoverageUnion.union(faces.stream().map(Geometry.class::cast).toArray(Geometry[]::new))
                        .norm();
    }

    /**
     * Edges of the building on the outer bounds of what is covered, less those of members thinner than a limit.
     *
     * @param thin in mm
     */
    List<LineSegment> outline(Geometry covered, double thin) {
        Geometry shrunk = BufferOp.bufferOp(covered, -thin / 2, SHARP);
        Geometry body = BufferOp.bufferOp(shrunk, thin / 2 + SLACK_MM, SHARP);
        PreparedGeometry stout = PreparedGeometryFactory.prepare(body);
        List<LineSegment> outline = new ArrayList<>();
        for (Object piece : PolygonExtracter.getPolygons(covered)) {
            Coordinate[] ring = ((Polygon) piece).getExteriorRing().getCoordinates();
            for (int n = 1; n < ring.length; n++) {
                LineSegment edge = edge(ring[n - 1], ring[n]);
                if (edges.get(edge) == ProfileSegment.Kind.BUILDING) {
                    clip(edge, stout, outline);
                }
            }
        }
        // in an order of their own, as that of the rings differs from run to run
        outline.sort((a, b) -> a.compareTo(b));
        return outline;
    }

    private static void clip(LineSegment edge, PreparedGeometry body, List<LineSegment> to) {
        LineString line = MAKER.createLineString(new Coordinate[] {edge.p0, edge.p1});
        if (body.covers(line)) {
            to.add(edge);
        } else if (body.intersects(line)) {
            for (Object part : LineStringExtracter.getLines(line.intersection(body.getGeometry()))) {
                LineString kept = (LineString) part;
                to.add(edge(kept.getCoordinateN(0), kept.getCoordinateN(kept.getNumPoints() - 1)));
            }
        }
    }

    /** Edges of the building outside what is covered. */
    List<LineSegment> outside(Geometry covered) {
        PreparedGeometry inside = PreparedGeometryFactory.prepare(covered);
        return edges.entrySet().stream()
                .filter(entry -> entry.getValue() == ProfileSegment.Kind.BUILDING)
                .map(Map.Entry::getKey)
                .filter(edge -> !inside.covers(MAKER.createPoint(edge.midPoint())))
                .toList();
    }
}
