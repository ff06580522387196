package org.adumbrate.linework.cleanup;

import java.util.Arrays;

/** Ends that could be linked, of which each gets at most one partner: the best offers are taken first. */
final class Links {
    private static final double STEPS_PER_UNIT = 1e5;
    private static final double MOST = 1e4;

    private int[] first = new int[64];
    private int[] second = new int[64];
    private long[] order = new long[64];
    private int count;

    /** Offers a link. The lower the score, from 0, the better; of equal ones the earlier offer is better. */
    void offer(int a, int b, double score) {
        if (count == order.length) {
            first = Arrays.copyOf(first, 2 * count);
            second = Arrays.copyOf(second, 2 * count);
            order = Arrays.copyOf(order, 2 * count);
        }
        first[count] = a;
        second[count] = b;
        order[count] = (long) (Math.min(MOST, score) * STEPS_PER_UNIT) << 32 | count;
        count++;
    }

    /** The partner of each end, or -1. */
    int[] partners(int ends) {
        int[] partners = new int[ends];
        Arrays.fill(partners, -1);
        Arrays.sort(order, 0, count);
        for (int n = 0; n < count; n++) {
            int k = (int) order[n];
            if (partners[first[k]] < 0 && partners[second[k]] < 0) {
                partners[first[k]] = second[k];
                partners[second[k]] = first[k];
            }
        }
        return partners;
    }

    /**
     * Follows a chain back from a piece to where it begins.
     *
     * @return the end at which it is entered: one without a partner, or end 0 of the piece if the chain is a ring
     */
    static int beginning(int piece, int[] partners) {
        int entered = 2 * piece;
        while (partners[entered] >= 0) {
            entered = partners[entered] ^ 1;
            if (entered == 2 * piece) {
                return entered;
            }
        }
        return entered;
    }
}
