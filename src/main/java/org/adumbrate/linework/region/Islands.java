package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/** Rings that are the outer bounds of connected lines, which lie as islands in a face of other lines. */
final class Islands {
    private final LineGraph graph;
    private final int[] ring;
    private final int[] faceOfRing;
    private final List<Long> areas;

    Islands(LineGraph graph, int[] ring, List<Long> areas, int[] faceOfRing) {
        this.graph = graph;
        this.ring = ring;
        this.areas = areas;
        this.faceOfRing = faceOfRing;
    }

    /** From the left to the right, so that what an island can lie in is settled before it. */
    void settle() {
        List<Integer> leftmost = leftmostSides();
        if (leftmost.size() < 2) {
            return;
        }
        FaceLocator locator = new FaceLocator(graph);
        leftmost.sort(Comparator.comparingInt(this::column));
        for (int side : leftmost) {
            faceOfRing[ring[side]] = faceLeftOf(locator, graph.start(side));
        }
    }

    private int column(int side) {
        return graph.x(graph.start(side));
    }

    private List<Integer> leftmostSides() {
        int[] leftmost = new int[areas.size()];
        Arrays.fill(leftmost, -1);
        for (int side = 0; side < ring.length; side++) {
            int r = ring[side];
            if (areas.get(r) <= 0 && (leftmost[r] < 0 || column(side) < column(leftmost[r]))) {
                leftmost[r] = side;
            }
        }
        List<Integer> found = new ArrayList<>();
        for (int side : leftmost) {
            if (side >= 0) {
                found.add(side);
            }
        }
        return found;
    }

    /** The face left of an island's leftmost corner; the island's own edges start at the corner or right of it. */
    private int faceLeftOf(FaceLocator locator, int corner) {
        OptionalInt side = locator.sideLeftOf(graph.x(corner), graph.y(corner));
        return side.isPresent() ? faceOfRing[ring[side.getAsInt()]] : 0;
    }
}
