package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.linework.region.LineGraph.Edge;

/**
 * The faces that lines divide the plane into. Edge e has two sides: 2e is seen when going from its first corner to its second,
 * 2e + 1 when coming back; each side bounds one face. A face with islands in it is one face. Face 0 is all around.
 *
 * <p>Sides, directions and areas are told in whole grid steps, without error.
 */
final class Faces {
    private final LineGraph graph;
    private final int[] next;
    private final int[] ring;
    private final int[] faceOfRing;
    private final int faces;

    private Faces(LineGraph graph, int[] next, int[] ring, int[] faceOfRing, int faces) {
        this.graph = graph;
        this.next = next;
        this.ring = ring;
        this.faceOfRing = faceOfRing;
        this.faces = faces;
    }

    /** @param graph without dangling chains */
    static Faces of(LineGraph graph) {
        return new Maker(graph).make();
    }

    LineGraph graph() {
        return graph;
    }

    int count() {
        return faces;
    }

    int sides() {
        return next.length;
    }

    /** The face that a side bounds. */
    int face(int side) {
        return faceOfRing[ring[side]];
    }

    /** The side that comes next when going round the face. */
    int next(int side) {
        return next[side];
    }

    Edge edge(int side) {
        return graph.edges().get(side / 2);
    }

    /** The corner that a side starts from. */
    int start(int side) {
        return graph.start(side);
    }

    /** Goes round all faces, then finds for each island the face that it lies in. */
    private static final class Maker {
        private final LineGraph graph;
        private final int[] next;
        private final int[] ring;
        private final List<Long> areas = new ArrayList<>();

        Maker(LineGraph graph) {
            this.graph = graph;
            this.next = new int[2 * graph.edges().size()];
            this.ring = new int[next.length];
        }

        Faces make() {
            for (int corner = 0; corner < graph.corners(); corner++) {
                turn(corner);
            }
            Arrays.fill(ring, -1);
            for (int side = 0; side < ring.length; side++) {
                if (ring[side] < 0) {
                    areas.add(goRound(side));
                }
            }
            int[] faceOfRing = new int[areas.size()];
            int faces = 1;
            for (int r = 0; r < faceOfRing.length; r++) {
                faceOfRing[r] = areas.get(r) > 0 ? faces++ : 0;
            }
            new Islands(graph, ring, areas, faceOfRing).settle();
            return new Faces(graph, next, ring, faceOfRing, faces);
        }

        /** Links the sides that meet in a corner: who arrives by a side leaves by the one that is first to the right. */
        private void turn(int corner) {
            Integer[] leaving = new Integer[graph.degree(corner)];
            for (int k = 0; k < leaving.length; k++) {
                int e = graph.incident(corner, k);
                leaving[k] = graph.edges().get(e).from() == corner ? 2 * e : 2 * e + 1;
            }
            Arrays.sort(leaving, this::byDirection);
            for (int k = 0; k < leaving.length; k++) {
                int before = leaving[(k + leaving.length - 1) % leaving.length];
                next[leaving[k] ^ 1] = before;
            }
        }

        private int byDirection(int one, int other) {
            long x1 = graph.dx(one);
            long y1 = graph.dy(one);
            long x2 = graph.dx(other);
            long y2 = graph.dy(other);
            boolean firstHalf1 = y1 > 0 || (y1 == 0 && x1 > 0);
            boolean firstHalf2 = y2 > 0 || (y2 == 0 && x2 > 0);
            if (firstHalf1 != firstHalf2) {
                return firstHalf1 ? -1 : 1;
            }
            return Long.signum(y1 * x2 - x1 * y2);
        }

        /** Twice the area of the ring that a side belongs to; positive if the face lies inside the ring. */
        private long goRound(int from) {
            long twice = 0;
            int side = from;
            do {
                ring[side] = areas.size();
                int a = graph.start(side);
                int b = graph.start(side ^ 1);
                twice += (long) graph.x(a) * graph.y(b) - (long) graph.x(b) * graph.y(a);
                side = next[side];
            } while (side != from);
            return twice;
        }
    }
}
