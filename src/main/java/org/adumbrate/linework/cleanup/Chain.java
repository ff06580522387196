package org.adumbrate.linework.cleanup;

/** LinePieces that lead from one to the next. */
final class Chain {
    private final int[] entered;
    private final boolean ring;

    /**
     * A chain.
     *
     * @param entered the ends at which its pieces are entered, in order
     * @param ring true if the last piece leads to the first
     */
    Chain(int[] entered, boolean ring) {
        this.entered = entered.clone();
        this.ring = ring;
    }

    int size() {
        return entered.length;
    }

    /** The end at which the n-th piece is entered; it is left at the other, whose number differs in the last bit. */
    int entered(int n) {
        return entered[n];
    }

    boolean isRing() {
        return ring;
    }
}
