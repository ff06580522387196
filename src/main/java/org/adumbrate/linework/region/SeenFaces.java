package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.region.PointedFaces.Spot;

/**
 * The faces that the lines of a drawing divide the sheet into. In a drawing without hidden lines each shows a part of one surface, as far as all
 * edges are drawn, and ends where that surface ends or something stands before it.
 */
public final class SeenFaces {
    /** Two grid steps: nearer than that a point may change sides by rounding alone. */
    private static final double ON_LINE_MM = 2.0 / LineGraph.STEPS_PER_MM;

    private final Faces faces;
    private final FaceLocator locator;
    private final Nearby edges;
    private final Map<Integer, Region<SheetPoint>> regions = new ConcurrentHashMap<>();

    private SeenFaces(Faces faces) {
        this.faces = faces;
        this.locator = new FaceLocator(faces.graph());
        this.edges = Nearby.edges(faces.graph());
    }

    /**
     * The faces between lines.
     *
     * @param lines edges of what is drawn; what lies off the sheet is left out
     * @param page the sheet, whose edges end faces as well
     * @param gapMm how far a line that falls short may be lengthened, in mm; 0 to close none
     * @throws IllegalArgumentException if the gap is negative or not finite
     */
    public static SeenFaces of(List<VectorPath<SheetPoint>> lines, SheetSize page, double gapMm) {
        List<Segment> all = new ArrayList<>(Straights.whole(Segment.of(lines, page, Kind.OWN)));
        all.addAll(Segment.border(page));
        return new SeenFaces(Faces.of(GapClosing.close(all, gapMm).withoutDangles()));
    }

    /** The number of the face in which a point lies; nothing off the sheet. */
    public OptionalInt at(SheetPoint point) {
        OptionalInt side = locator.sideLeftOf(point.x() * LineGraph.STEPS_PER_MM, point.y() * LineGraph.STEPS_PER_MM);
        int face = side.isPresent() ? faces.face(side.getAsInt()) : 0;
        return face == 0 ? OptionalInt.empty() : OptionalInt.of(face);
    }

    /** One of the faces. */
    public Region<SheetPoint> region(int face) {
        return regions.computeIfAbsent(face, number -> {
            BitSet chosen = new BitSet();
            chosen.set(number);
            return FaceSet.region(faces, chosen);
        });
    }

    /**
     * The faces that points name, joined to one region. Points off the sheet name none.
     *
     * @param points in any order, several in one face, too
     */
    public PointedFaces named(List<SheetPoint> points) {
        BitSet chosen = new BitSet();
        List<Spot> spots = new ArrayList<>();
        for (SheetPoint point : points) {
            OptionalInt face = at(point);
            face.ifPresent(chosen::set);
            spots.add(face.isPresent() ? spot(face.getAsInt(), point) : new Spot(PointedFaces.NONE, false, 0, 0));
        }
        Region<SheetPoint> all =
                chosen.cardinality() == 1 ? region(chosen.nextSetBit(0)) : FaceSet.region(faces, chosen);
        return new PointedFaces(all, spots);
    }

    private Spot spot(int face, SheetPoint point) {
        LineGraph graph = faces.graph();
        boolean onLine = edges.within(ON_LINE_MM, point.x(), point.y()).stream()
                .anyMatch(e -> graph.distanceMm(graph.edges().get(e), point) <= ON_LINE_MM);
        double edgeMm = 0;
        double twice = 0;
        for (int side = 0; side < faces.sides(); side++) {
            if (faces.face(side) == face) {
                int a = faces.start(side);
                int b = faces.start(side ^ 1);
                twice += graph.xMm(a) * graph.yMm(b) - graph.xMm(b) * graph.yMm(a);
                edgeMm += faces.edge(side).kind() == Kind.BORDER ? graph.lengthMm(faces.edge(side)) : 0;
            }
        }
        return new Spot(face, onLine, twice / 2, edgeMm);
    }
}
