package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.adumbrate.geometry.SheetPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/**
 * Lines cut wherever they meet: corners on a fine grid and the edges between them. No two edges are alike, and none
 * passes a corner closer than half a grid step without ending there (snap rounding, Hobby 1999), so that duplicates and
 * near duplicates fall together. Coordinates are whole grid steps, in which sides and angles can be told without error.
 */
final class LineGraph {
    /** Grid steps in a mm: a step is a fortieth of the finest pen. */
    static final int STEPS_PER_MM = 200;

    /**
     * An edge between two corners.
     *
     * @param source the line it is a piece of, or one of them
     */
    record Edge(int from, int to, Segment source) {
        Kind kind() {
            return source.kind();
        }

        int other(int corner) {
            return corner == from ? to : from;
        }
    }

    private final int[] x;
    private final int[] y;
    private final List<Edge> edges;
    private final int[] first;
    private final int[] incident;

    private LineGraph(int[] x, int[] y, List<Edge> edges) {
        this.x = x;
        this.y = y;
        this.edges = edges;
        this.first = new int[x.length + 1];
        this.incident = new int[2 * edges.size()];
        for (Edge edge : edges) {
            first[edge.from + 1]++;
            first[edge.to + 1]++;
        }
        for (int corner = 0; corner < x.length; corner++) {
            first[corner + 1] += first[corner];
        }
        int[] next = first.clone();
        for (int e = 0; e < edges.size(); e++) {
            incident[next[edges.get(e).from]++] = e;
            incident[next[edges.get(e).to]++] = e;
        }
    }

    static LineGraph of(List<Segment> segments) {
        List<SegmentString> strings = new ArrayList<>(segments.size());
        for (Segment segment : segments) {
            Coordinate[] ends = {new Coordinate(segment.x0(), segment.y0()), new Coordinate(segment.x1(), segment.y1())
            };
            strings.add(new NodedSegmentString(ends, segment));
        }
        SnapRoundingNoder noder = new SnapRoundingNoder(new PrecisionModel(STEPS_PER_MM));
        noder.computeNodes(strings);
        Collector collector = new Collector();
        for (Object noded : noder.getNodedSubstrings()) {
            SegmentString string = (SegmentString) noded;
            for (int k = 1; k < string.size(); k++) {
                collector.edge(string.getCoordinate(k - 1), string.getCoordinate(k), (Segment) string.getData());
            }
        }
        return collector.graph();
    }

    int corners() {
        return x.length;
    }

    List<Edge> edges() {
        return edges;
    }

    /** A corner's column on the grid. */
    int x(int corner) {
        return x[corner];
    }

    /** A corner's row on the grid. */
    int y(int corner) {
        return y[corner];
    }

    double xMm(int corner) {
        return (double) x[corner] / STEPS_PER_MM;
    }

    double yMm(int corner) {
        return (double) y[corner] / STEPS_PER_MM;
    }

    double lengthMm(Edge edge) {
        return Math.hypot(xMm(edge.from) - xMm(edge.to), yMm(edge.from) - yMm(edge.to));
    }

    /** How far a point of the sheet lies from an edge. */
    double distanceMm(Edge edge, SheetPoint point) {
        return new LineSegment(xMm(edge.from), yMm(edge.from), xMm(edge.to), yMm(edge.to))
                .distance(new Coordinate(point.x(), point.y()));
    }

    /** The corner that a side starts from: side 2e goes along edge e from its first corner, side 2e + 1 comes back. */
    int start(int side) {
        Edge edge = edges.get(side / 2);
        return side % 2 == 0 ? edge.from : edge.to;
    }

    /** How many columns a side goes to the right. */
    long dx(int side) {
        return (long) x[start(side ^ 1)] - x[start(side)];
    }

    /** How many rows a side goes down. */
    long dy(int side) {
        return (long) y[start(side ^ 1)] - y[start(side)];
    }

    /** How many edges end in a corner. */
    int degree(int corner) {
        return first[corner + 1] - first[corner];
    }

    /** The number of the k-th edge that ends in a corner. */
    int incident(int corner, int k) {
        return incident[first[corner] + k];
    }

    /** The same without some edges; corners keep their numbers. */
    LineGraph without(BitSet dropped) {
        if (dropped.isEmpty()) {
            return this;
        }
        List<Edge> kept = new ArrayList<>(edges.size());
        for (int e = 0; e < edges.size(); e++) {
            if (!dropped.get(e)) {
                kept.add(edges.get(e));
            }
        }
        return new LineGraph(x, y, kept);
    }

    /** The same without chains of edges that lead nowhere. */
    LineGraph withoutDangles() {
        int[] degree = new int[corners()];
        List<Integer> tips = new ArrayList<>();
        for (int corner = 0; corner < degree.length; corner++) {
            degree[corner] = degree(corner);
            if (degree[corner] == 1) {
                tips.add(corner);
            }
        }
        BitSet dropped = new BitSet();
        while (!tips.isEmpty()) {
            int tip = tips.remove(tips.size() - 1);
            for (int k = 0; k < degree(tip); k++) {
                int e = incident(tip, k);
                if (!dropped.get(e)) {
                    dropped.set(e);
                    int other = edges.get(e).other(tip);
                    degree[tip]--;
                    if (--degree[other] == 1) {
                        tips.add(other);
                    }
                }
            }
        }
        return without(dropped);
    }

    /** Numbers corners and edges as they come; of edges alike it keeps the one whose kind goes first, then a drawn one, then the longest. */
    private static final class Collector {
        /** An odd factor: neighbours in number get hash codes far apart (Knuth, vol. 3, 6.4). */
        private static final long SPREAD = 0x9E3779B97F4A7C15L;

        private final Map<Long, Integer> corners = new HashMap<>();
        private final List<Edge> edges = new ArrayList<>();
        private final Map<Long, Integer> byEnds = new HashMap<>();

        void edge(Coordinate from, Coordinate to, Segment source) {
            int a = corner(from);
            int b = corner(to);
            if (a == b) {
                return;
            }
            Edge edge = new Edge(Math.min(a, b), Math.max(a, b), source);
            Integer same = byEnds.putIfAbsent(SPREAD * pair(edge.from, edge.to), edges.size());
            if (same == null) {
                edges.add(edge);
            } else if (goesBefore(source, edges.get(same).source)) {
                edges.set(same, edge);
            }
        }

        private static boolean goesBefore(Segment one, Segment other) {
            int byKind = one.kind().compareTo(other.kind());
            boolean isLonger = one.isDrawn() == other.isDrawn() ? one.length() > other.length() : one.isDrawn();
            return byKind < 0 || (byKind == 0 && isLonger);
        }

        private int corner(Coordinate at) {
            long place = pair((int) Math.rint(at.x * STEPS_PER_MM), (int) Math.rint(at.y * STEPS_PER_MM));
            return corners.computeIfAbsent(place, key -> corners.size());
        }

        private static long pair(int a, int b) {
            return ((long) a << 32) | (b & 0xffffffffL);
        }

        LineGraph graph() {
            int[] x = new int[corners.size()];
            int[] y = new int[corners.size()];
            corners.forEach((place, corner) -> {
                x[corner] = (int) (place >> 32);
                y[corner] = (int) (long) place;
            });
            return new LineGraph(x, y, edges);
        }
    }
}
