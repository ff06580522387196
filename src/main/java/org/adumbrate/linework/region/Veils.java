package org.adumbrate.linework.region;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/**
 * Regions that a kind of line encloses, for a veil over them: foliage by its outlines, a pane or a neighbouring wall by its
 * edges. Lines within such a region do not divide it and make no holes.
 */
public final class Veils {
    private Veils() {}

    /**
     * What lines enclose, everything within their loops included. Where a line runs into another kind's line, as a tree behind
     * a roof does, its loop is closed along that line, or along the sheet's edge. What leaks is left out.
     *
     * @param lines the outlines; what lies off the sheet is left out
     * @param others lines of other kinds that may hide the outlines: of the same export, and not of things that can be seen
     *     through
     * @param page the sheet
     * @param gapMm how far a line that falls short may be lengthened, in mm; 0 to close no gap
     * @throws IllegalArgumentException if the gap is negative or not finite
     */
    public static Region<SheetPoint> enclosed(
            List<VectorPath<SheetPoint>> lines, List<VectorPath<SheetPoint>> others, SheetSize page, double gapMm) {
        List<Segment> segments = Straights.whole(Segment.of(lines, page, Kind.OWN));
        if (segments.isEmpty()) {
            return Region.empty(Space.SHEET);
        }
        List<Segment> all = new ArrayList<>(segments);
        all.addAll(Straights.whole(new Surroundings(segments).of(Segment.of(others, page, Kind.OTHER))));
        all.addAll(Segment.border(page));
        Faces faces = Faces.of(GapClosing.close(all, gapMm).withoutDangles());
        BitSet within = unreached(faces);
        within.or(OpenLoops.inside(faces));
        return FaceSet.region(faces, within);
    }

    /**
     * The crowns alone of trees that a region shows with their stems: without parts that are much narrower than the piece they
     * belong to, about a quarter, and long.
     */
    public static Region<SheetPoint> withoutStems(Region<SheetPoint> trees) {
        return Stems.cutOff(trees);
    }

    /** The faces that cannot be reached from the sheet's edge without crossing an own line. */
    private static BitSet unreached(Faces faces) {
        List<List<Integer>> sidesOf = new ArrayList<>();
        for (int face = 0; face < faces.count(); face++) {
            sidesOf.add(new ArrayList<>());
        }
        for (int side = 0; side < faces.sides(); side++) {
            sidesOf.get(faces.face(side)).add(side);
        }
        BitSet unreached = new BitSet();
        unreached.set(1, faces.count());
        Deque<Integer> next = new ArrayDeque<>(List.of(0));
        while (!next.isEmpty()) {
            for (int side : sidesOf.get(next.remove())) {
                int beyond = faces.face(side ^ 1);
                if (faces.edge(side).kind() != Kind.OWN && unreached.get(beyond)) {
                    unreached.clear(beyond);
                    next.add(beyond);
                }
            }
        }
        return unreached;
    }
}
