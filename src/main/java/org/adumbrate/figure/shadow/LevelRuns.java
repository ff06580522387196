package org.adumbrate.figure.shadow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.VectorPath;

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
        region.outline().visit(new VectorPath.Visitor() {
            private double startX;
            private double startY;
            private double x;
            private double y;

            @Override
            public void moveTo(double toX, double toY) {
                x = startX = toX;
                y = startY = toY;
            }

            @Override
            public void lineTo(double toX, double toY) {
                edges.add(new Edge(x, y, toX, toY));
                x = toX;
                y = toY;
            }

            @Override
            public void curveTo(double x1, double y1, double x2, double y2, double toX, double toY) {
                throw new IllegalStateException("a region is bounded by straight edges");
            }

            @Override
            public void close() {
                lineTo(startX, startY);
            }
        });
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
