package org.adumbrate.linework.dashes;

/** Links the ends of dashes across the gaps between them: each end with the nearest that goes on where it points to. */
final class DashLinks {
    /** The longest gap, in mm. */
    private static final double LONGEST_GAP_MM = 6;

    /** Where there are many ends, gaps are looked for as far as so many are likely to lie in a square as wide. */
    private static final double MOST_ENDS = 12;

    private static final double SURE_GAP_MM = 1.2;

    /** A gap is at most so many times as long as the longer dash beside it (a spaced dashed line of ISO 128-2 has 12 : 18) ... */
    private static final double GAP_SHARE = 1.6;

    /** ... or so many line widths, between dots. */
    private static final double GAP_WIDTHS = 8;

    /** What is nearer than this is no gap, in mm. */
    private static final double SHORTEST_GAP_MM = 0.02;

    /** How far a line may turn between an end and the middle of a gap, in radians. */
    private static final double MOST_TURN = Math.toRadians(18);

    /** How far the direction of a dash may be off by rounding: in radians, and by so many mm at its end. */
    private static final double NOISE = 0.03;

    private static final double NOISE_MM = 0.012;

    private static final double STRAIGHT_ON = Math.cos(MOST_TURN);

    private static final byte LOOKED = 1;

    /** A line goes on there without a gap. */
    private static final byte GOES_ON = 2;

    private final DashRuns runs;
    private final GapsOfLook gaps;
    private final EndCells cells;
    private final double longestGap;
    private final int[] best;
    private final double[] score;
    private final byte[] state;

    /** The end that is looked from. */
    private int from;

    /** Tells whether dashes of a look may have a gap, in mm. */
    @FunctionalInterface
    interface GapsOfLook {
        /** Of any length that a gap may have. */
        GapsOfLook ANY = (look, gap) -> true;

        boolean may(int look, double gap);
    }

    DashLinks(DashRuns runs, boolean[] used, GapsOfLook gaps) {
        this.runs = runs;
        this.gaps = gaps;
        this.cells = new EndCells(runs, used);
        this.longestGap =
                Math.min(LONGEST_GAP_MM, Math.max(SURE_GAP_MM, Math.sqrt(MOST_ENDS / cells.endsPerSquareMm())));
        this.best = new int[2 * runs.size()];
        this.score = new double[2 * runs.size()];
        this.state = new byte[2 * runs.size()];
    }

    /** The end that an end is linked with; -1 if there is none. Ends are looked from when they are asked for. */
    int linked(int end) {
        int other = nearest(end);
        return other >= 0 && nearest(other) == end && ((state[end] | state[other]) & GOES_ON) == 0 ? other : -1;
    }

    private int nearest(int end) {
        if (state[end] == 0) {
            state[end] = LOOKED;
            best[end] = -1;
            score[end] = Double.POSITIVE_INFINITY;
            from = end;
            cells.ahead(
                    runs.x(end),
                    runs.y(end),
                    runs.outX(end),
                    runs.outY(end),
                    longestGap,
                    Math.tan(MOST_TURN),
                    SHORTEST_GAP_MM,
                    this::offer);
        }
        return best[end];
    }

    private double reach(int run) {
        return Math.min(longestGap, Math.max(GAP_SHARE * runs.lengthMm(run), GAP_WIDTHS * runs.widthMm(run)));
    }

    private void offer(int to) {
        int a = from >> 1;
        int b = to >> 1;
        if (a == b || runs.look(a) != runs.look(b)) {
            return;
        }
        double vx = runs.x(to) - runs.x(from);
        double vy = runs.y(to) - runs.y(from);
        double gap = Math.sqrt(vx * vx + vy * vy);
        if (gap < SHORTEST_GAP_MM) {
            state[from] |= goesOn(runs, from, to) ? GOES_ON : 0;
        } else if (gap <= Math.max(reach(a), reach(b)) && gaps.may(runs.look(a), gap)) {
            double out = turn(from, vx, vy);
            double in = turn(to, -vx, -vy);
            double noise = NOISE + NOISE_MM / Math.min(runs.lengthMm(a), runs.lengthMm(b)) + NOISE_MM / gap;
            double off = Math.abs(out + in);
            double most = Math.max(Math.abs(out), Math.abs(in));
            double least = Math.min(Math.abs(out), Math.abs(in));
            if (most <= MOST_TURN && off <= Math.min(0.3, noise) + 0.2 * least) {
                better(to, gap * (1 + 5 * off));
            }
        }
    }

    /** By how much a line turns from the direction of an end into another. */
    private double turn(int end, double vx, double vy) {
        return Math.atan2(runs.outX(end) * vy - runs.outY(end) * vx, runs.outX(end) * vx + runs.outY(end) * vy);
    }

    /** Whether a line that ends at one goes on at the other, which lies at the same place. */
    static boolean goesOn(DashRuns runs, int a, int b) {
        return runs.outX(a) * runs.outX(b) + runs.outY(a) * runs.outY(b) < -STRAIGHT_ON;
    }

    private void better(int to, double cost) {
        if (cost < score[from] || (cost == score[from] && to < best[from])) {
            score[from] = cost;
            best[from] = to;
        }
    }
}
