package org.adumbrate.linework.dashes;

/**
 * Tells which runs may be inner dashes of a dashed line, by looking at the ends that lie on exactly one point alone, as nearly all do in
 * exports of models. Each line that counts has an inner dash with an end that lies on no line across ({@link TouchedEnds} leaves at
 * least n - 1 of the 2n - 2 inner ends of n dashes free, and two of these belong to the first and the last), and none of its dashes
 * ends where a line of its look goes on.
 */
final class MetEnds {
    /** Above what {@link TouchedEnds} takes for across, for the end of a curve is seen by finer chords here. */
    private static final double ACROSS = Math.sin(Math.toRadians(12));

    private static final byte FREE = 0;
    private static final byte CROSSED = 1;
    private static final byte GOES_ON = 2;

    private final DashRuns runs;
    private final boolean[] used;

    /** The last end at each place, in an open table by the place's bits; minus one where there is none. */
    private final int[] table;

    /** The end before one at its place. */
    private final int[] before;

    private final byte[] state;

    MetEnds(DashRuns runs, boolean[] used) {
        this.runs = runs;
        this.used = used;
        int ends = 2 * runs.size();
        table = new int[Math.max(16, Integer.highestOneBit(ends) << 2)];
        before = new int[ends];
        state = new byte[ends];
        for (int end = 0; end < ends; end++) {
            if (!used[end >> 1]) {
                put(end);
            }
        }
    }

    private void put(int end) {
        double x = runs.x(end);
        double y = runs.y(end);
        long bits = (Double.doubleToRawLongBits(x) * 31 + Double.doubleToRawLongBits(y)) * 0x9E3779B97F4A7C15L;
        int at = (int) (bits >>> 32) & (table.length - 1);
        while (table[at] != 0 && (runs.x(table[at] - 1) != x || runs.y(table[at] - 1) != y)) {
            at = (at + 1) & (table.length - 1);
        }
        before[end] = table[at] - 1;
        table[at] = end + 1;
        // one that meets many, such as a place where a mark is drawn over and over, needs no look at all of them
        int other = before[end];
        for (int looks = 0; other >= 0 && looks < 8; looks++) {
            meet(end, other);
            other = before[other];
        }
    }

    private void meet(int a, int b) {
        double cross = runs.outX(a) * runs.outY(b) - runs.outY(a) * runs.outX(b);
        byte met = FREE;
        if (runs.look(a >> 1) == runs.look(b >> 1) && a >> 1 != b >> 1 && DashLinks.goesOn(runs, a, b)) {
            met = GOES_ON;
        } else if (Math.abs(cross) > ACROSS) {
            met = CROSSED;
        }
        state[a] = (byte) Math.max(state[a], met);
        state[b] = (byte) Math.max(state[b], met);
    }

    /** An end of a run that may be an inner dash, one that lies on no other line as far as is known; -1 if it cannot be one. */
    int seed(int run) {
        byte begin = state[2 * run];
        byte end = state[2 * run + 1];
        if (used[run] || begin == GOES_ON || end == GOES_ON) {
            return -1;
        }
        return begin == FREE ? 2 * run : end == FREE ? 2 * run + 1 : -1;
    }
}
