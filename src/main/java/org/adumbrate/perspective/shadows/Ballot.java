package org.adumbrate.perspective.shadows;

import java.util.List;
import java.util.function.IntPredicate;

/** Edges vote for directions: each gives every candidate what it counts, from 0 to 1, if that were the right one. */
final class Ballot {
    /** The winner's own votes must be so many times the rival's; set on renders with known suns. */
    private static final double CLEARLY = 2;

    /** Two long edges and a short one are the fewest that count, however few votes the rival has. */
    private static final double LEAST_LEAD = 2.5;

    private final List<float[]> votes;
    private final int candidates;

    /** @param votes of each edge, for each candidate */
    Ballot(List<float[]> votes, int candidates) {
        this.votes = votes;
        this.candidates = candidates;
    }

    /**
     * How the winner stands to the one that comes nearest.
     *
     * @param winner the number of the candidate with most votes
     * @param lead votes that the winner has and the rival has not
     * @param behind votes that the rival has and the winner has not
     * @param rival its number, -1 if there is none
     */
    record Result(int winner, double lead, double behind, int rival) {
        /** Whether the winner has too few votes of its own to count. */
        boolean isWeak() {
            return lead < LEAST_LEAD;
        }

        /** Whether the votes that the winner alone has clearly outweigh those of the rival. */
        boolean isClear() {
            return lead >= CLEARLY * behind;
        }
    }

    /**
     * Counts.
     *
     * @param sameness tells which candidates are too near to the winner to be rivals
     */
    Result count(Sameness sameness) {
        int winner = 0;
        double most = -1;
        for (int k = 0; k < candidates; k++) {
            double total = 0;
            for (float[] one : votes) {
                total += one[k];
            }
            if (total > most) {
                most = total;
                winner = k;
            }
        }
        return against(winner, sameness.to(winner));
    }

    /** Tells which candidates are as good as one. */
    interface Sameness {
        IntPredicate to(int winner);
    }

    private Result against(int winner, IntPredicate isSame) {
        Result nearest = new Result(winner, 0, 0, -1);
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < candidates; k++) {
            if (!isSame.test(k)) {
                double lead = 0;
                double behind = 0;
                for (float[] one : votes) {
                    float more = one[winner] - one[k];
                    lead += Math.max(0, more);
                    behind += Math.max(0, -more);
                }
                if (lead - CLEARLY * behind < least) {
                    least = lead - CLEARLY * behind;
                    nearest = new Result(winner, lead, behind, k);
                }
            }
        }
        return nearest;
    }
}
