package org.adumbrate.linework.region;

import java.util.BitSet;
import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.region.LineGraph.Edge;

/**
 * Regions from the outlines that a modeller draws around a section cut: in pieces, with gaps, doubled, in any order.
 *
 * <p>Crossing an outline leads from outside to inside or back, so the faces between the lines are told apart by turns: a
 * room within the cut is a hole, a beam within the room is cut again. Where lines run off the sheet, the sheet's edge closes
 * the region. Lines that divide the cut, and loose ones, bound nothing.
 */
public final class ClosedRegions {
    private ClosedRegions() {}

    /**
     * What was found.
     *
     * @param region what the lines enclose, right to a grid step of 0.005 mm
     * @param looseEnds ends that meet nothing within the gap, in no particular order
     * @param topMm the length of the sheet's top edge that the region takes up, in mm. Where it is more than 0, lines run off
     *     the top, either side of them could be the cut, and the side with more of the top edge was taken to be open.
     */
    public record Closed(Region<SheetPoint> region, List<LooseEnd> looseEnds, double topMm) {
        /** Copies the list. */
        public Closed {
            looseEnds = List.copyOf(looseEnds);
        }
    }

    /**
     * The region that lines are the outline of. What lies at the top edge of the sheet is taken to be outside.
     *
     * @param lines the outlines; what lies off the sheet is left out
     * @param page the sheet, whose edges close what runs off it
     * @param gapMm how far a line that falls short may be lengthened, in mm; 0 to close none
     * @throws IllegalArgumentException if the gap is negative or not finite
     */
    public static Closed of(List<VectorPath<SheetPoint>> lines, SheetSize page, double gapMm) {
        List<Segment> segments = Straights.whole(Segment.of(lines, page, Kind.OWN));
        if (segments.isEmpty()) {
            return new Closed(Region.empty(Space.SHEET), List.of(), 0);
        }
        segments.addAll(Segment.border(page));
        LineGraph graph = GapClosing.close(segments, gapMm);
        Faces faces = Faces.of(graph.withoutDangles());
        int open = openFace(faces);
        BitSet cut = opposite(faces, open);
        return new Closed(FaceSet.region(faces, cut), LooseEnds.of(graph, gapMm), topMm(faces, cut));
    }

    /** The face that takes up most of the sheet's top edge, or all around if lines of the region are drawn there. */
    private static int openFace(Faces faces) {
        double[] top = new double[faces.count()];
        int open = 0;
        for (int side = 0; side < faces.sides(); side++) {
            int face = faces.face(side);
            if (face != 0 && isTop(faces, side)) {
                top[face] += faces.graph().lengthMm(faces.edge(side));
                open = top[face] > top[open] ? face : open;
            }
        }
        return open;
    }

    private static boolean isTop(Faces faces, int side) {
        Edge edge = faces.edge(side);
        LineGraph graph = faces.graph();
        return edge.kind() == Kind.BORDER && graph.y(edge.from()) == 0 && graph.y(edge.to()) == 0;
    }

    private static BitSet opposite(Faces faces, int open) {
        BitSet inner = InnerLines.of(faces, open);
        Sides sides = new Sides(faces.count());
        for (int side = 0; side < faces.sides(); side += 2) {
            if (faces.edge(side).kind() == Kind.OWN) {
                sides.join(faces.face(side), faces.face(side + 1), !inner.get(side / 2));
            }
        }
        BitSet cut = new BitSet();
        for (int face = 1; face < faces.count(); face++) {
            cut.set(face, sides.opposite(face, open));
        }
        return cut;
    }

    private static double topMm(Faces faces, BitSet cut) {
        double length = 0;
        for (int side = 0; side < faces.sides(); side++) {
            if (cut.get(faces.face(side)) && isTop(faces, side)) {
                length += faces.graph().lengthMm(faces.edge(side));
            }
        }
        return length;
    }
}
