package org.adumbrate.linework.outline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Lets each part of a rim be the flank of one stretch. Around corners and ends, edges face others besides those that they run beside;
 * such stretches are short, so the longest are taken first.
 */
final class FlankClaims {
    /** On curves, stretches that follow each other overlap by a little: by less than this share of themselves. */
    private static final double OVERLAP = 0.4;

    /** For each edge, from and to of the parts that are taken. */
    private final double[][] taken;

    private FlankClaims(int edges) {
        taken = new double[edges][];
    }

    /** Those stretches that do not claim what longer ones have taken, in the order in which they are given. */
    static List<Facing> settled(List<Facing> stretches, int edges) {
        FlankClaims claims = new FlankClaims(edges);
        List<Integer> order = new ArrayList<>();
        for (int k = 0; k < stretches.size(); k++) {
            order.add(k);
        }
        order.sort(Comparator.comparingDouble(k -> -stretches.get(k).length()));
        boolean[] kept = new boolean[stretches.size()];
        for (int k : order) {
            Facing one = stretches.get(k);
            kept[k] = claims.isFree(one.first(), one.from0(), one.to0())
                    && claims.isFree(one.second(), one.from1(), one.to1());
            if (kept[k]) {
                claims.take(one.first(), one.from0(), one.to0());
                claims.take(one.second(), one.from1(), one.to1());
            }
        }
        List<Facing> settled = new ArrayList<>();
        for (int k = 0; k < kept.length; k++) {
            if (kept[k]) {
                settled.add(stretches.get(k));
            }
        }
        return settled;
    }

    private boolean isFree(int edge, double from, double to) {
        double covered = 0;
        double[] parts = taken[edge];
        for (int k = 0; parts != null && k < parts.length; k += 2) {
            covered += Math.max(0, Math.min(to, parts[k + 1]) - Math.max(from, parts[k]));
        }
        return covered <= OVERLAP * (to - from);
    }

    private void take(int edge, double from, double to) {
        int count = taken[edge] == null ? 0 : taken[edge].length;
        taken[edge] = count == 0 ? new double[2] : Arrays.copyOf(taken[edge], count + 2);
        taken[edge][count] = from;
        taken[edge][count + 1] = to;
    }
}
