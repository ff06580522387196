package org.adumbrate.figure.shadow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.Region;

/** Where a region lies on a level line. */
final class LevelRuns {
    private record Edge(double ax, double ay, double bx, double by) {
        boolean crosses(double y) {
            return (ay <= y) != (by <= y);
        }

        double x(double y) {
            return ax + (bx - ax) * (y - ay) / (by - ay);
        }
    }

    private final List<Edge> edges;

    private LevelRuns(List<Edge> edges) {
        this.edges = edges;
    }

    static LevelRuns of(Region<?> region) {
        List<Edge> edges = new ArrayList<>();
        region.sides((x0, y0, x1, y1) -> edges.add(new Edge(x0, y0, x1, y1)));
        return new LevelRuns(edges);
    }

    /** The ends of the region's runs at a height, in ascending order: from, to, from, to ... */
    double[] at(double y) {
        double[] ends = edges.stream()
                .filter(edge -> edge.crosses(y))
                .mapToDouble(edge -> edge.x(y))
                .toArray();
        Arrays.sort(ends);
        return ends;
    }
}
