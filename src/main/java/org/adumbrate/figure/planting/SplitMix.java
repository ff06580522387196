package org.adumbrate.figure.planting;

/**
 * Random numbers that are the same for a seed wherever the program runs (Steele, Lea and Flood, "Fast splittable pseudorandom
 * number generators", OOPSLA 2014; SplitMix64).
 */
final class SplitMix {
    private long state;

    SplitMix(long seed) {
        this.state = seed;
    }

    long nextLong() {
        state += 0x9E3779B97F4A7C15L;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** From 0 up to but without 1. */
    double nextUnit() {
        return (nextLong() >>> 11) * 0x1.0p-53;
    }

    /** Between two numbers. */
    double between(double low, double high) {
        return low + (high - low) * nextUnit();
    }

    /** From 0 up to but without a bound. */
    int below(int bound) {
        return (int) (nextUnit() * bound);
    }

    /** One or the other, as often. */
    boolean nextFlag() {
        return nextLong() < 0;
    }
}
