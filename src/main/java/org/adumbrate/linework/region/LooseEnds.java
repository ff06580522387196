package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.linework.region.LineGraph.Edge;

/** Ends that are left when gaps have been closed, and how far each was from being joined. */
final class LooseEnds {
    private static final double FARTHEST_MM = 50;

    private LooseEnds() {}

    static List<LooseEnd> of(LineGraph graph, double gapMm) {
        List<LooseEnd> loose = new ArrayList<>();
        Nearby edges = Nearby.edges(graph);
        for (LineEnd end : LineEnd.of(graph, 2 * gapMm)) {
            if (end.kind() == Kind.OWN) {
                SheetPoint position = new SheetPoint(graph.xMm(end.corner()), graph.yMm(end.corner()));
                loose.add(new LooseEnd(position, nearest(graph, edges, end)));
            }
        }
        return loose;
    }

    private static double nearest(LineGraph graph, Nearby edges, LineEnd end) {
        SheetPoint place = new SheetPoint(end.x(), end.y());
        double nearest = Double.POSITIVE_INFINITY;
        for (double reach = 1; nearest > reach && reach < 4 * FARTHEST_MM; reach *= 4) {
            for (int e : edges.within(Math.min(reach, FARTHEST_MM), end.x(), end.y())) {
                if (!end.tail().edges().contains(e)) {
                    Edge edge = graph.edges().get(e);
                    nearest = Math.min(nearest, graph.distanceMm(edge, place));
                }
            }
        }
        return nearest;
    }
}
