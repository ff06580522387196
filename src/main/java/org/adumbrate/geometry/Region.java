package org.adumbrate.geometry;

import java.io.DataInputStream;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;
import org.locationtech.jts.io.WKBWriter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;

/**
 * A part of a plane bounded by straight edges: any number of pieces, each with any number of holes; immutable. Bounds are
 * kept in double precision; results of {@link #union}, {@link #minus} and {@link #within} are right to a billionth of the
 * coordinates.
 *
 * @param <P> the plane it lies in
 */
public final class Region<P extends PlanePoint> {
    private static final GeometryFactory MAKER = new GeometryFactory();

    private final Space<P> space;
    private final Geometry polygons;
    private volatile IndexedPointInAreaLocator locator;

    private Region(Space<P> space, Geometry geometry) {
        this.space = space;
        List<?> pieces = PolygonExtracter.getPolygons(geometry);
        this.polygons = MAKER.createMultiPolygon(
                pieces.stream().map(Polygon.class::cast).toArray(Polygon[]::new));
    }

    /** Nothing. */
    public static <P extends PlanePoint> Region<P> empty(Space<P> space) {
        return new Region<>(space, MAKER.createMultiPolygon());
    }

    /**
     * What polygons cover between them, each given by its corners; one that crosses itself is filled wherever it winds.
     *
     * @throws IllegalArgumentException if the sides of one cross too often; see {@link #requireFewCrossings}
     */
    public static <P extends PlanePoint> Region<P> of(Space<P> space, Collection<? extends List<P>> polygons) {
        List<Geometry> pieces = new ArrayList<>();
        for (List<P> polygon : polygons) {
            VectorPath.Builder<P> path = VectorPath.in(space);
            for (int k = 0; k < polygon.size(); k++) {
                if (k == 0) {
                    path.moveTo(polygon.get(k).x(), polygon.get(k).y());
                } else {
                    path.lineTo(polygon.get(k).x(), polygon.get(k).y());
                }
            }
            pieces.add(evenOdd(path.build(), 0.01).polygons);
        }
        return pieces.isEmpty()
                ? empty(space)
                : new Region<>(
                        space, OverlayNGRobust.union(MAKER.createGeometryCollection(pieces.toArray(Geometry[]::new))));
    }

    /**
     * Checks that a polygon is one of which a region can be made.
     *
     * @param corners at least one
     * @throws IllegalArgumentException if its sides cross each other tens of thousands of times
     */
    public static void requireFewCrossings(List<? extends PlanePoint> corners) {
        if (corners.size() > Crossings.HARMLESS) {
            Coordinate[] ring = new Coordinate[corners.size() + 1];
            for (int k = 0; k < ring.length; k++) {
                PlanePoint corner = corners.get(k % corners.size());
                ring[k] = new Coordinate(corner.x(), corner.y());
            }
            Crossings.requireFew(List.<Coordinate[]>of(ring));
        }
    }

    /** An upright rectangle. */
    public static <P extends PlanePoint> Region<P> rectangle(
            Space<P> space, double left, double top, double right, double bottom) {
        return new Region<>(space, MAKER.toGeometry(new Envelope(left, right, top, bottom)));
    }

    /**
     * What a path's runs enclose, each closed by a straight line if it is not closed; where runs overlap they cancel out, so
     * that a run inside another is a hole (the even-odd rule).
     *
     * @param tolerance how far curves may be straightened, in the unit of the plane
     * @throws IllegalArgumentException if the runs cross millions of times
     */
    public static <P extends PlanePoint> Region<P> evenOdd(VectorPath<P> path, double tolerance) {
        List<Coordinate[]> rings = rings(path, tolerance);
        if (rings.size() == 1) {
            Polygon only = MAKER.createPolygon(rings.get(0));
            if (only.isValid()) {
                return new Region<>(path.space(), only);
            }
        }
        return new Region<>(path.space(), Winding.faces(rings, n -> n % 2 != 0));
    }

    /**
     * What a path's runs wind around, each closed by a straight line if it is not closed: a run inside another is a hole
     * only where it goes the other way round (the non-zero rule).
     *
     * @param tolerance how far curves may be straightened, in the unit of the plane
     * @throws IllegalArgumentException if the runs cross millions of times
     */
    public static <P extends PlanePoint> Region<P> nonZero(VectorPath<P> path, double tolerance) {
        return new Region<>(path.space(), Winding.faces(rings(path, tolerance), n -> n != 0));
    }

    /**
     * What straight runs enclose that neither cross nor touch themselves or each other, as those traced from pixels: those
     * that run clockwise as seen, y being down, are holes. Far quicker than {@link #nonZero} where there are many.
     */
    public static <P extends PlanePoint> Region<P> nested(VectorPath<P> path) {
        return new Region<>(path.space(), NestedRings.polygons(rings(path, 1)));
    }

    /**
     * What any of several regions covers.
     *
     * @throws IllegalArgumentException if their bounds cross millions of times
     */
    public static <P extends PlanePoint> Region<P> union(Space<P> space, Collection<Region<P>> regions) {
        Geometry all = MAKER.createGeometryCollection(
                regions.stream().map(Region::polygons).toArray(Geometry[]::new));
        List<Coordinate[]> bounds = new ArrayList<>();
        for (Object ring : LinearComponentExtracter.getLines(all)) {
            bounds.add(((LineString) ring).getCoordinates());
        }
        Crossings.requireFew(bounds);
        return bounds.isEmpty() ? empty(space) : new Region<>(space, OverlayNGRobust.union(all));
    }

    private static List<Coordinate[]> rings(VectorPath<?> path, double tolerance) {
        List<Coordinate[]> rings = new ArrayList<>();
        for (Coordinate[] run : CoordinateRuns.of(path, tolerance)) {
            Coordinate[] ring = closed(run);
            if (ring.length >= 4) {
                rings.add(ring);
            }
        }
        return rings;
    }

    private static Coordinate[] closed(Coordinate[] run) {
        if (run[0].equals2D(run[run.length - 1])) {
            return run;
        }
        Coordinate[] ring = java.util.Arrays.copyOf(run, run.length + 1);
        ring[run.length] = run[0];
        return ring;
    }

    /** What a polygon library knows as polygons; lines and points in it are left out. */
    public static <P extends PlanePoint> Region<P> ofPolygons(Space<P> space, Geometry geometry) {
        return new Region<>(space, geometry);
    }

    /** The polygons themselves, for work that only the polygon library does; not to be changed. */
    public Geometry polygons() {
        return polygons;
    }

    /** The plane it lies in. */
    public Space<P> space() {
        return space;
    }

    /** True when it covers nothing. */
    public boolean isEmpty() {
        return polygons.isEmpty();
    }

    /** Its area in the square of the plane's unit. */
    public double area() {
        return polygons.getArea();
    }

    /** How far it reaches; nothing if it covers nothing. */
    public Optional<Extent> extent() {
        Envelope box = polygons.getEnvelopeInternal();
        return box.isNull()
                ? Optional.empty()
                : Optional.of(new Extent(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY()));
    }

    /** True when a point lies in it or on its bounds; asked often, it is answered from an index. */
    public boolean contains(P point) {
        IndexedPointInAreaLocator index = locator;
        if (index == null) {
            index = new IndexedPointInAreaLocator(polygons);
            locator = index;
        }
        return index.locate(new Coordinate(point.x(), point.y())) != Location.EXTERIOR;
    }

    /** The pieces it consists of, each with its holes. */
    public List<Region<P>> pieces() {
        List<Region<P>> pieces = new ArrayList<>();
        for (int k = 0; k < polygons.getNumGeometries(); k++) {
            pieces.add(new Region<>(space, polygons.getGeometryN(k)));
        }
        return pieces;
    }

    /** What either covers. */
    public Region<P> union(Region<P> other) {
        return overlay(other, OverlayNG.UNION);
    }

    /** What this covers and the other does not. */
    public Region<P> minus(Region<P> other) {
        return overlay(other, OverlayNG.DIFFERENCE);
    }

    /** What both cover. */
    public Region<P> within(Region<P> other) {
        return overlay(other, OverlayNG.INTERSECTION);
    }

    private Region<P> overlay(Region<P> other, int operation) {
        return new Region<>(space, OverlayNGRobust.overlay(polygons, other.polygons, operation));
    }

    /** Grown all round by a distance, with round corners; shrunk if it is negative. */
    public Region<P> grown(double distance) {
        return new Region<>(space, polygons.buffer(distance));
    }

    /** With the holes filled that are narrower than a width all along; gaps that are open to the outside stay. */
    public Region<P> withoutCracks(double width) {
        List<Polygon> pieces = new ArrayList<>();
        for (int k = 0; k < polygons.getNumGeometries(); k++) {
            Polygon piece = (Polygon) polygons.getGeometryN(k);
            List<LinearRing> holes = new ArrayList<>();
            for (int n = 0; n < piece.getNumInteriorRing(); n++) {
                LinearRing hole = piece.getInteriorRingN(n);
                if (!MAKER.createPolygon(hole).buffer(-width / 2).isEmpty()) {
                    holes.add(hole);
                }
            }
            pieces.add(MAKER.createPolygon(piece.getExteriorRing(), holes.toArray(LinearRing[]::new)));
        }
        return new Region<>(space, MAKER.createMultiPolygon(pieces.toArray(Polygon[]::new)));
    }

    /** With fewer corners: its bounds move by no more than a tolerance, and pieces and holes stay apart. */
    public Region<P> simplified(double tolerance) {
        return new Region<>(space, TopologyPreservingSimplifier.simplify(polygons, tolerance));
    }

    /** The image under a map. */
    public <Q extends PlanePoint> Region<Q> transform(Affine<P, Q> map) {
        Geometry moved = polygons.copy();
        moved.apply((org.locationtech.jts.geom.CoordinateFilter) at -> {
            double x = map.mapX(at.x, at.y);
            at.y = map.mapY(at.x, at.y);
            at.x = x;
        });
        moved.geometryChanged(); // the copy knows the extent of what it was copied from
        return new Region<>(map.to(), moved);
    }

    /** Goes around its bounds side by side, as {@link #outline} does. */
    public void sides(ChordVisitor visitor) {
        outline().chords(Double.MAX_VALUE, visitor);
    }

    /** Its bounds as closed runs, holes the other way round than what they are in: right for either fill rule. */
    public VectorPath<P> outline() {
        VectorPath.Builder<P> path = VectorPath.in(space);
        Geometry ordered = polygons.norm();
        for (int k = 0; k < ordered.getNumGeometries(); k++) {
            Polygon piece = (Polygon) ordered.getGeometryN(k);
            ring(piece.getExteriorRing(), path);
            for (int hole = 0; hole < piece.getNumInteriorRing(); hole++) {
                ring(piece.getInteriorRingN(hole), path);
            }
        }
        return path.build();
    }

    private static void ring(LineString ring, VectorPath.Builder<?> path) {
        CoordinateSequence corners = ring.getCoordinateSequence();
        path.moveTo(corners.getX(0), corners.getY(0));
        for (int k = 1; k < corners.size() - 1; k++) {
            path.lineTo(corners.getX(k), corners.getY(k));
        }
        path.close();
    }

    /** The parts of a path that lie in it, curves straightened to within a tolerance. */
    public VectorPath<P> clip(VectorPath<P> path, double tolerance) {
        return lines(path, tolerance, OverlayNG.INTERSECTION);
    }

    /** The parts of a path that do not lie in it, curves straightened to within a tolerance. */
    public VectorPath<P> clipAway(VectorPath<P> path, double tolerance) {
        return lines(path, tolerance, OverlayNG.DIFFERENCE);
    }

    private VectorPath<P> lines(VectorPath<P> path, double tolerance, int operation) {
        VectorPath.Builder<P> kept = VectorPath.in(space);
        for (Coordinate[] run : CoordinateRuns.of(path, tolerance)) {
            Geometry parts = OverlayNGRobust.overlay(MAKER.createLineString(run), polygons, operation);
            for (int k = 0; k < parts.getNumGeometries(); k++) {
                if (parts.getGeometryN(k) instanceof LineString line && !line.isEmpty()) {
                    line(line, kept);
                }
            }
        }
        return kept.build();
    }

    private static void line(LineString line, VectorPath.Builder<?> path) {
        if (line.isClosed()) {
            ring(line, path);
            return;
        }
        CoordinateSequence points = line.getCoordinateSequence();
        path.moveTo(points.getX(0), points.getY(0));
        for (int k = 1; k < points.size(); k++) {
            path.lineTo(points.getX(k), points.getY(k));
        }
    }

    /** Writes it, to be read by {@link #readFrom}; coordinates are kept to the last bit. */
    public void writeTo(DataOutput out) throws IOException {
        byte[] binary = new WKBWriter().write(polygons);
        out.writeUTF(space.toString());
        out.writeInt(binary.length);
        out.write(binary);
    }

    /**
     * Reads what {@link #writeTo} wrote.
     *
     * @throws IOException if there is no region
     */
    public static Region<?> readFrom(DataInputStream in) throws IOException {
        Space<?> space = Space.named(in.readUTF());
        byte[] binary = in.readNBytes(in.readInt());
        try {
            return new Region<>(space, new WKBReader(MAKER).read(binary));
        } catch (ParseException e) {
            throw new IOException("no region", e);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Region<?> region && space == region.space && polygons.equalsNorm(region.polygons);
    }

    @Override
    public int hashCode() {
        return polygons.norm().hashCode();
    }

    /** As well-known text, for messages and tests. */
    @Override
    public String toString() {
        return polygons.toString();
    }
}
