package org.adumbrate.linework.dashes;

import java.util.Optional;

/** A pattern of dashes and gaps that comes again and again. */
final class Rhythm {
    /** A dash, a gap, a dot, a gap, a dot and a gap are the longest pattern that is looked for. */
    static final int LONGEST = 3;

    /** How much lengths of the same dash may differ: a share, and in any case so much, in mm. */
    private static final double DASH_SHARE = 0.03;

    private static final double DASH_MM = 0.02;

    /** The same of gaps, for which two ends count. */
    private static final double GAP_SHARE = 0.04;

    private static final double GAP_MM = 0.03;

    /**
     * A part of a row of dashes that keeps a rhythm.
     *
     * @param first the first dash
     * @param count how many dashes
     * @param rhythm the pattern, beginning with the first dash
     * @param phaseMm how much of the pattern's first dash is missing at the beginning
     */
    record Span(int first, int count, Rhythm rhythm, double phaseMm) {}

    private final double[] dashes;
    private final double[] gaps;

    private Rhythm(double[] dashes, double[] gaps) {
        this.dashes = dashes;
        this.gaps = gaps;
    }

    /** How long a dash of a period is, in mm. */
    double dash(int slot) {
        return dashes[slot];
    }

    /** How long the gap after a dash of a period is, in mm. */
    double gap(int slot) {
        return gaps[slot];
    }

    int period() {
        return dashes.length;
    }

    /** How many dashes it takes to be sure of a pattern of a period: two of each besides the first and the last, and three of one. */
    static int sure(int period) {
        return period == 1 ? 5 : 2 * period + 2;
    }

    /**
     * The longest part of a row that begins with a dash and keeps a rhythm with so many dashes in a period. The dashes at its ends may
     * be cut short; those between are whole.
     *
     * @param lengths of the dashes
     * @param between of the gaps after each but the last
     */
    static Optional<Span> from(int first, int period, double[] lengths, double[] between) {
        double[] dashes = new double[period];
        double[] gaps = new double[period];
        int[] dashCount = new int[period];
        int[] gapCount = new int[period];
        int last = first;
        while (last + 1 < lengths.length) {
            int slot = (last - first) % period;
            boolean whole = last == first || meets(dashes, dashCount, slot, lengths[last], DASH_SHARE, DASH_MM);
            if (!whole || !meets(gaps, gapCount, slot, between[last], GAP_SHARE, GAP_MM)) {
                break;
            }
            if (last > first) {
                take(dashes, dashCount, slot, lengths[last]);
            }
            take(gaps, gapCount, slot, between[last]);
            last++;
        }
        int count = last - first + 1;
        if (count < sure(period) || dashCount[0] == 0) {
            return Optional.empty();
        }
        int lastSlot = (last - first) % period;
        if (isLonger(lengths[last], dashes[lastSlot])) {
            count--;
        }
        if (isLonger(lengths[first], dashes[0]) || count < sure(period)) {
            return Optional.empty();
        }
        return Optional.of(new Span(first, count, new Rhythm(dashes, gaps), phase(lengths[first], dashes[0])));
    }

    /** How many dashes from one on keep this rhythm, beginning with the dash of a slot; all but the ends are whole. */
    int length(int first, int slot, double[] lengths, double[] between) {
        int last = first;
        if (isLonger(lengths[first], dashes[slot])) {
            return 0;
        }
        while (last + 1 < lengths.length) {
            int at = (slot + last - first) % period();
            boolean whole = last == first || isSame(lengths[last], dashes[at], DASH_SHARE, DASH_MM);
            int next = (at + 1) % period();
            if (!whole
                    || !isSame(between[last], gaps[at], GAP_SHARE, GAP_MM)
                    || isLonger(lengths[last + 1], dashes[next])) {
                break;
            }
            last++;
        }
        return last - first + 1;
    }

    /** The same beginning with another dash. */
    Rhythm startingAt(int slot) {
        double[] turnedDashes = new double[period()];
        double[] turnedGaps = new double[period()];
        for (int k = 0; k < period(); k++) {
            turnedDashes[k] = dashes[(slot + k) % period()];
            turnedGaps[k] = gaps[(slot + k) % period()];
        }
        return new Rhythm(turnedDashes, turnedGaps);
    }

    /** Whether a dash has the whole length of a slot's. */
    boolean isWhole(double length, int slot) {
        return isSame(length, dashes[slot], DASH_SHARE, DASH_MM);
    }

    /** Whether a gap is as long as that after a slot's dash. */
    boolean isGap(double length, int slot) {
        return isSame(length, gaps[slot], GAP_SHARE, GAP_MM);
    }

    /** How much is missing at the beginning of a dash. */
    static double phase(double length, double whole) {
        return isSame(length, whole, DASH_SHARE, DASH_MM) ? 0 : Math.max(0, whole - length);
    }

    private static boolean isLonger(double length, double whole) {
        return length > whole && !isSame(length, whole, DASH_SHARE, DASH_MM);
    }

    private static boolean meets(double[] means, int[] counts, int slot, double length, double share, double mm) {
        return counts[slot] == 0 || isSame(length, means[slot], share, mm);
    }

    private static boolean isSame(double length, double mean, double share, double mm) {
        return Math.abs(length - mean) <= Math.min(Math.max(share * mean, mm), mean / 3);
    }

    private static void take(double[] means, int[] counts, int slot, double length) {
        means[slot] += (length - means[slot]) / ++counts[slot];
    }
}
