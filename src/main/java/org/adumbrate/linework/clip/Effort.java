package org.adumbrate.linework.clip;

/**
 * Counts the work that the clips of one sheet cause, and ends it where no drawing's would: a file of a few kilobytes can hold
 * clips and lines that take days to cut.
 */
final class Effort {
    /** What a look at a crossing costs, in looks at an edge. */
    static final int CROSSING = 20;

    /** Looks at an edge; some seconds. A drawing of 60000 lines clipped by an outline of 1000 edges takes a tenth. */
    private static final long MOST = 500_000_000;

    private long spent;

    /** @throws TooIntricateException if all that was spent is more than any drawing takes */
    void spend(long looks) {
        spent += looks;
        if (spent > MOST) {
            throw new TooIntricateException("has clips that take more than " + MOST + " steps to cut lines by");
        }
    }
}
