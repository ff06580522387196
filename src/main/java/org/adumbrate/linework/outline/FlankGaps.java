package org.adumbrate.linework.outline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * What lies along a shape's rims between the flanks of its middle. Each stretch of the middle has a flank on either side. Between
 * a flank and the next along the rim is a gap, in which the rim goes around an end, around a corner, or from one branch into another.
 * So gaps tell which ends of stretches belong together. End 0 of stretch k has the number 2k, end 1 the number 2k + 1.
 */
final class FlankGaps {
    /** A flank: of which stretch, on which edge and how far along it, whether the rim goes along it as the stretch does. */
    private record Flank(int stretch, int edge, double on, boolean forth) {
        int entered() {
            return 2 * stretch + (forth ? 0 : 1);
        }

        int left() {
            return 2 * stretch + (forth ? 1 : 0);
        }
    }

    private final ShapeEdges edges;

    /** For each end the ends that its two gaps lead to; -1 before it is known. */
    private final int[] beside;

    /** For each end the rim's corners in the gaps that belong to it. */
    private final List<List<Integer>> corners = new ArrayList<>();

    FlankGaps(ShapeEdges edges, List<Facing> stretches) {
        this.edges = edges;
        this.beside = new int[4 * stretches.size()];
        Arrays.fill(beside, -1);
        for (int k = 0; k < 2 * stretches.size(); k++) {
            corners.add(new ArrayList<>(2));
        }
        List<Flank> flanks = new ArrayList<>();
        for (int k = 0; k < stretches.size(); k++) {
            Facing stretch = stretches.get(k);
            flanks.add(new Flank(k, stretch.first(), (stretch.from0() + stretch.to0()) / 2, /* forth= */ true));
            flanks.add(new Flank(k, stretch.second(), (stretch.from1() + stretch.to1()) / 2, /* forth= */ false));
        }
        flanks.sort(Comparator.comparingInt(Flank::edge).thenComparingDouble(Flank::on));
        int from = 0;
        for (int rim = 0; rim < edges.rims(); rim++) {
            int to = from;
            while (to < flanks.size() && flanks.get(to).edge() < edges.first(rim + 1)) {
                to++;
            }
            for (int k = from; k < to; k++) {
                join(flanks.get(k), flanks.get(k + 1 < to ? k + 1 : from), rim);
            }
            from = to;
        }
    }

    private void join(Flank before, Flank after, int rim) {
        int a = before.left();
        int b = after.entered();
        put(a, b);
        put(b, a);
        int first = edges.first(rim);
        int size = edges.first(rim + 1) - first;
        boolean around = after.edge() < before.edge() || (after.edge() == before.edge() && after.on() <= before.on());
        int count = after.edge() - before.edge() + (around ? size : 0);
        for (int k = 1; k <= count; k++) {
            int corner = first + (before.edge() - first + k) % size;
            corners.get(a).add(corner);
            if (a != b) {
                corners.get(b).add(corner);
            }
        }
    }

    private void put(int end, int other) {
        beside[beside[2 * end] < 0 ? 2 * end : 2 * end + 1] = other;
    }

    /** The corners in the gaps beside an end, each by the number of the edge that begins there. */
    List<Integer> corners(int end) {
        return corners.get(end);
    }

    /** Ends that belong together, each group once; a free end is alone. */
    List<int[]> groups() {
        List<int[]> groups = new ArrayList<>();
        boolean[] seen = new boolean[beside.length / 2];
        for (int k = 0; k < seen.length; k++) {
            if (!seen[k]) {
                groups.add(group(k, seen));
            }
        }
        return groups;
    }

    private int[] group(int start, boolean[] seen) {
        int[] found = {start, -1, -1, -1};
        int count = 1;
        seen[start] = true;
        for (int k = 0; k < count; k++) {
            for (int side = 0; side < 2; side++) {
                int next = beside[2 * found[k] + side];
                if (next >= 0 && !seen[next]) {
                    seen[next] = true;
                    if (count == found.length) {
                        found = Arrays.copyOf(found, 2 * count);
                    }
                    found[count++] = next;
                }
            }
        }
        return Arrays.copyOf(found, count);
    }
}
