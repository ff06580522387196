package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.adumbrate.linework.region.LineGraph.Edge;

/**
 * An end of a line that meets nothing.
 *
 * @param corner where it lies in the graph
 * @param kind what the line belongs to
 * @param x where it lies exactly, in mm of the sheet
 * @param y likewise
 * @param dx the direction in which the line would go on, of length 1
 * @param dy likewise
 * @param tail the line itself near its end, which it must not be joined with
 */
record LineEnd(int corner, Kind kind, double x, double y, double dx, double dy, Tail tail) {
    /**
     * A line followed from its end to the next crossing or end, or for as long as was asked.
     *
     * @param edges the numbers of its edges
     * @param far the corner that was reached
     * @param lengthMm the way to it
     */
    record Tail(Set<Integer> edges, int far, double lengthMm) {
        static Tail from(LineGraph graph, int corner, double mostMm) {
            Set<Integer> edges = new HashSet<>();
            int at = corner;
            int e = graph.incident(corner, 0);
            double length = 0;
            while (edges.add(e)) {
                Edge edge = graph.edges().get(e);
                length += graph.lengthMm(edge);
                at = edge.other(at);
                if (length > mostMm || graph.degree(at) != 2) {
                    break;
                }
                e = graph.incident(at, 0) == e ? graph.incident(at, 1) : graph.incident(at, 0);
            }
            return new Tail(edges, at, length);
        }
    }

    /**
     * All ends in a graph.
     *
     * @param tailMm how far their lines are followed
     */
    static List<LineEnd> of(LineGraph graph, double tailMm) {
        List<LineEnd> ends = new ArrayList<>();
        for (int corner = 0; corner < graph.corners(); corner++) {
            if (graph.degree(corner) == 1) {
                ends.add(at(graph, corner, tailMm));
            }
        }
        return ends;
    }

    private static LineEnd at(LineGraph graph, int corner, double tailMm) {
        Edge edge = graph.edges().get(graph.incident(corner, 0));
        Segment source = edge.source();
        int other = edge.other(corner);
        double dx = (source.x1() - source.x0()) / source.length();
        double dy = (source.y1() - source.y0()) / source.length();
        double along = (graph.x(corner) - graph.x(other)) * dx + (graph.y(corner) - graph.y(other)) * dy;
        double sign = along < 0 ? -1 : 1;
        double x = graph.xMm(corner);
        double y = graph.yMm(corner);
        // back onto the line that the grid moved it off
        double off = (x - source.x0()) * dy - (y - source.y0()) * dx;
        Tail tail = Tail.from(graph, corner, tailMm);
        return new LineEnd(corner, edge.kind(), x - off * dy, y + off * dx, sign * dx, sign * dy, tail);
    }

    double distanceTo(LineEnd other) {
        return Math.hypot(other.x - x, other.y - y);
    }
}
