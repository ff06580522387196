package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import org.adumbrate.linework.region.LineGraph.Edge;

/**
 * Lines that part nothing from nothing. An outline passes through its corners, so an even number of its edges ends in each; a
 * corner where an odd number ends has a line that divides the inside (a joint between two slabs, say) or a second line
 * beside the first. Odd corners are therefore paired by the shortest ways between them, and the edges of these ways
 * bound nothing. A drawn edge with the open sheet on one side is on a way only if hardly anything else is left; what was only
 * supposed to close a gap may be, as where a wall's corner ends a hair below the roof that it bears.
 */
final class InnerLines {
    /** How many times dearer an edge of the outside is: a line across a large sheet against a mm of it. */
    private static final double OUTSIDE = 1000;

    /** To go along an edge once more would make it count again. */
    private static final double AGAIN_MM = 1e10;

    private final Faces faces;
    private final LineGraph graph;
    private final int open;
    private final BitSet inner = new BitSet();

    private InnerLines(Faces faces, int open) {
        this.faces = faces;
        this.graph = faces.graph();
        this.open = open;
    }

    private record Way(double lengthMm, int from, int to, List<Integer> edges) {}

    private record Reached(double lengthMm, int corner) {}

    /**
     * The numbers of the own lines' edges that bound nothing.
     *
     * @param open a face known to lie outside of the region
     */
    static BitSet of(Faces faces, int open) {
        InnerLines lines = new InnerLines(faces, open);
        lines.addBridges();
        lines.pairOddCorners();
        return lines.inner;
    }

    private void addBridges() {
        for (int side = 0; side < faces.sides(); side += 2) {
            if (faces.face(side) == faces.face(side + 1)) {
                inner.set(side / 2);
            }
        }
    }

    private void pairOddCorners() {
        BitSet odd = new BitSet();
        for (int corner = 0; corner < graph.corners(); corner++) {
            if (isOdd(corner)) {
                odd.set(corner);
            }
        }
        while (!odd.isEmpty()) {
            List<Way> ways = new ArrayList<>();
            for (int corner = odd.nextSetBit(0); corner >= 0; corner = odd.nextSetBit(corner + 1)) {
                Way way = shortest(corner, odd);
                if (way == null) {
                    odd.clear(corner);
                } else {
                    ways.add(way);
                }
            }
            ways.sort(Comparator.comparingDouble(Way::lengthMm));
            for (Way way : ways) {
                if (odd.get(way.from) && (odd.get(way.to) || onBorder(way.to))) {
                    odd.clear(way.from);
                    odd.clear(way.to);
                    way.edges.forEach(inner::flip);
                }
            }
        }
    }

    private boolean isOdd(int corner) {
        int count = 0;
        for (int k = 0; k < graph.degree(corner); k++) {
            int e = graph.incident(corner, k);
            if (graph.edges().get(e).kind() == Kind.BORDER) {
                return false;
            }
            count += inner.get(e) ? 0 : 1;
        }
        return count % 2 == 1;
    }

    private boolean onBorder(int corner) {
        for (int k = 0; k < graph.degree(corner); k++) {
            if (graph.edges().get(graph.incident(corner, k)).kind() == Kind.BORDER) {
                return true;
            }
        }
        return false;
    }

    /** The shortest way to another odd corner or to the edge of the sheet, or null if there is none (Dijkstra 1959). */
    private Way shortest(int from, BitSet odd) {
        Map<Integer, Double> lengths = new HashMap<>();
        Map<Integer, Integer> cameBy = new HashMap<>();
        PriorityQueue<Reached> next = new PriorityQueue<>(
                Comparator.comparingDouble(Reached::lengthMm).thenComparingInt(Reached::corner));
        lengths.put(from, 0.0);
        next.add(new Reached(0, from));
        while (!next.isEmpty()) {
            Reached reached = next.remove();
            int corner = reached.corner;
            if (reached.lengthMm > lengths.get(corner)) {
                continue;
            }
            if (corner != from && (odd.get(corner) || onBorder(corner))) {
                return new Way(reached.lengthMm, from, corner, back(corner, from, cameBy));
            }
            for (int k = 0; k < graph.degree(corner); k++) {
                int e = graph.incident(corner, k);
                int other = graph.edges().get(e).other(corner);
                double length = reached.lengthMm + cost(e);
                if (length < lengths.getOrDefault(other, Double.POSITIVE_INFINITY)) {
                    lengths.put(other, length);
                    cameBy.put(other, e);
                    next.add(new Reached(length, other));
                }
            }
        }
        return null;
    }

    private double cost(int e) {
        Edge edge = graph.edges().get(e);
        if (inner.get(e)) {
            // a bridge, or already on a way
            return AGAIN_MM;
        }
        boolean outside = faces.face(2 * e) == open || faces.face(2 * e + 1) == open;
        return graph.lengthMm(edge) * (outside && edge.source().isDrawn() ? OUTSIDE : 1);
    }

    private List<Integer> back(int corner, int from, Map<Integer, Integer> cameBy) {
        List<Integer> edges = new ArrayList<>();
        int at = corner;
        while (at != from) {
            int e = cameBy.get(at);
            edges.add(e);
            at = graph.edges().get(e).other(at);
        }
        return edges;
    }
}
