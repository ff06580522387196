package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.adumbrate.linework.region.LineGraph.Edge;
import org.locationtech.jts.index.intervalrtree.SortedPackedIntervalRTree;

/** Rings that are the outer bounds of connected lines, which lie as islands in a face of other lines. */
final class Islands {
    private final LineGraph graph;
    private final int[] ring;
    private final int[] faceOfRing;
    private final List<Long> areas;
    private final SortedPackedIntervalRTree byRow = new SortedPackedIntervalRTree();

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
        for (int e = 0; e < graph.edges().size(); e++) {
            int y0 = graph.y(graph.edges().get(e).from());
            int y1 = graph.y(graph.edges().get(e).to());
            if (y0 != y1) {
                byRow.insert(Math.min(y0, y1), Math.max(y0, y1), e);
            }
        }
        leftmost.sort(Comparator.comparingInt(this::column));
        for (int side : leftmost) {
            faceOfRing[ring[side]] = faceLeftOf(graph.start(side));
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

    /** The face left of an island's leftmost corner, half a step below it, where no edge can end. */
    private int faceLeftOf(int corner) {
        double row = graph.y(corner) + 0.5;
        double[] nearest = {Double.NEGATIVE_INFINITY};
        int[] found = {-1};
        byRow.query(row, row, item -> {
            int e = (Integer) item;
            double column = columnAt(e, row);
            // the island's own edges start at the corner or right of it
            if (column < graph.x(corner) && column > nearest[0]) {
                nearest[0] = column;
                found[0] = e;
            }
        });
        if (found[0] < 0) {
            return 0;
        }
        Edge edge = graph.edges().get(found[0]);
        boolean goesUp = graph.y(edge.to()) < graph.y(edge.from());
        return faceOfRing[ring[goesUp ? 2 * found[0] : 2 * found[0] + 1]];
    }

    private double columnAt(int e, double row) {
        Edge edge = graph.edges().get(e);
        double x0 = graph.x(edge.from());
        double y0 = graph.y(edge.from());
        double dx = graph.x(edge.to()) - x0;
        return x0 + (row - y0) * dx / (graph.y(edge.to()) - y0);
    }
}
