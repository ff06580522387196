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
import org.adumbrate.linework.region.LineGraph.Edge;
import org.locationtech.jts.index.intervalrtree.SortedPackedIntervalRTree;

/**
 * The faces that the lines of a drawing divide the sheet into. In a drawing without hidden lines each shows a part of one surface, as far as all
 * edges are drawn, and ends where that surface ends or something stands before it.
 */
public final class SeenFaces {
    private final Faces faces;
    private final SortedPackedIntervalRTree byRow = new SortedPackedIntervalRTree();
    private final Map<Integer, Region<SheetPoint>> regions = new ConcurrentHashMap<>();

    private SeenFaces(Faces faces) {
        this.faces = faces;
        LineGraph graph = faces.graph();
        List<Edge> edges = graph.edges();
        for (int e = 0; e < edges.size(); e++) {
            int y0 = graph.y(edges.get(e).from());
            int y1 = graph.y(edges.get(e).to());
            if (y0 != y1) {
                byRow.insert(Math.min(y0, y1), Math.max(y0, y1), e);
            }
        }
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
        LineGraph graph = faces.graph();
        double column = point.x() * LineGraph.STEPS_PER_MM;
        // half a step off the rows that corners lie on
        double row = Math.floor(point.y() * LineGraph.STEPS_PER_MM) + 0.5;
        double[] nearest = {Double.NEGATIVE_INFINITY};
        int[] found = {-1};
        byRow.query(row, row, item -> {
            int e = (Integer) item;
            double there = columnAt(e, row);
            if (there < column && there > nearest[0]) {
                nearest[0] = there;
                found[0] = e;
            }
        });
        if (found[0] < 0) {
            return OptionalInt.empty();
        }
        Edge edge = graph.edges().get(found[0]);
        boolean goesUp = graph.y(edge.to()) < graph.y(edge.from());
        int face = faces.face(goesUp ? 2 * found[0] : 2 * found[0] + 1);
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

    private double columnAt(int e, double row) {
        LineGraph graph = faces.graph();
        Edge edge = graph.edges().get(e);
        double x0 = graph.x(edge.from());
        double y0 = graph.y(edge.from());
        double dx = graph.x(edge.to()) - x0;
        return x0 + (row - y0) * dx / (graph.y(edge.to()) - y0);
    }
}
