package org.adumbrate.linework.region;

import java.util.OptionalInt;
import org.adumbrate.linework.region.LineGraph.Edge;
import org.locationtech.jts.index.intervalrtree.SortedPackedIntervalRTree;

/**
 * Finds what lies left of a place between lines: the side, turned towards the place, of the edge that a level ray to the left meets first.
 * The ray runs between the rows that corners lie on, so no edge ends on it.
 */
final class FaceLocator {
    private final LineGraph graph;
    private final SortedPackedIntervalRTree byRow = new SortedPackedIntervalRTree();

    FaceLocator(LineGraph graph) {
        this.graph = graph;
        for (int e = 0; e < graph.edges().size(); e++) {
            int y0 = graph.y(graph.edges().get(e).from());
            int y1 = graph.y(graph.edges().get(e).to());
            if (y0 != y1) {
                byRow.insert(Math.min(y0, y1), Math.max(y0, y1), e);
            }
        }
    }

    /**
     * The side that bounds the face in which a place lies, as in {@link Faces}.
     *
     * @param column in grid steps
     * @param row in grid steps; the look to the left is along the middle of the grid row that it lies in
     * @return nothing where no edge lies left of the place, which is all around then
     */
    OptionalInt sideLeftOf(double column, double row) {
        double between = Math.floor(row) + 0.5;
        double[] nearest = {Double.NEGATIVE_INFINITY};
        int[] found = {-1};
        byRow.query(between, between, item -> {
            int e = (Integer) item;
            double there = columnAt(e, between);
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
        return OptionalInt.of(goesUp ? 2 * found[0] : 2 * found[0] + 1);
    }

    private double columnAt(int e, double row) {
        Edge edge = graph.edges().get(e);
        double x0 = graph.x(edge.from());
        double y0 = graph.y(edge.from());
        double dx = graph.x(edge.to()) - x0;
        return x0 + (row - y0) * dx / (graph.y(edge.to()) - y0);
    }
}
