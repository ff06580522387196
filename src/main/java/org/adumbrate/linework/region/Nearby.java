package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.linework.region.LineGraph.Edge;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/** Finds, by their numbers, edges or ends near a place. */
final class Nearby {
    private final HPRtree tree = new HPRtree();

    private Nearby() {}

    static Nearby edges(LineGraph graph) {
        Nearby nearby = new Nearby();
        List<Edge> edges = graph.edges();
        for (int e = 0; e < edges.size(); e++) {
            int a = edges.get(e).from();
            int b = edges.get(e).to();
            nearby.tree.insert(new Envelope(graph.xMm(a), graph.xMm(b), graph.yMm(a), graph.yMm(b)), e);
        }
        return nearby;
    }

    static Nearby ends(List<LineEnd> ends) {
        Nearby nearby = new Nearby();
        for (int k = 0; k < ends.size(); k++) {
            LineEnd end = ends.get(k);
            nearby.tree.insert(new Envelope(end.x(), end.x(), end.y(), end.y()), k);
        }
        return nearby;
    }

    /** Those whose upright bounds come within a distance of a place, across and down. */
    List<Integer> within(double distanceMm, double x, double y) {
        Envelope around = new Envelope(x, x, y, y);
        around.expandBy(distanceMm);
        List<Integer> found = new ArrayList<>();
        tree.query(around, item -> found.add((Integer) item));
        return found;
    }
}
