package org.adumbrate.linework.dashes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.linework.Stroke;

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

    private final DashRuns runs;
    private final List<Stroke> strokes;
    private final int[] best;
    private double longestGap = LONGEST_GAP_MM;
    private final double[] score;

    /** Ends at which a line goes on without a gap. */
    private final boolean[] goesOn;

    private DashLinks(DashRuns runs, List<Stroke> strokes) {
        this.runs = runs;
        this.strokes = strokes;
        this.best = new int[2 * runs.size()];
        this.score = new double[2 * runs.size()];
        this.goesOn = new boolean[2 * runs.size()];
        Arrays.fill(best, -1);
        Arrays.fill(score, Double.POSITIVE_INFINITY);
    }

    /** Rows of dashes, each as the ends at which they are entered, in order; without those that are used. */
    static List<int[]> rows(DashRuns runs, List<Stroke> strokes, boolean[] used) {
        DashLinks links = new DashLinks(runs, strokes);
        EndCells cells = new EndCells(runs, used);
        links.longestGap =
                Math.min(LONGEST_GAP_MM, Math.max(SURE_GAP_MM, Math.sqrt(MOST_ENDS / cells.endsPerSquareMm())));
        for (int end = 0; end < 2 * runs.size(); end++) {
            if (!used[end >> 1]) {
                links.look(end, cells);
            }
        }
        return links.rows();
    }

    private void look(int end, EndCells cells) {
        double reach = reach(end >> 1);
        cells.ahead(
                runs.x(end),
                runs.y(end),
                runs.outX(end),
                runs.outY(end),
                reach,
                Math.tan(MOST_TURN),
                SHORTEST_GAP_MM,
                other -> offer(end, other, reach));
    }

    private double reach(int run) {
        DashRuns.Piece piece = runs.piece(run);
        double width = strokes.get(piece.stroke()).widthMm();
        return Math.min(longestGap, Math.max(GAP_SHARE * piece.lengthMm(), GAP_WIDTHS * width));
    }

    private void offer(int a, int b, double reach) {
        if (a >> 1 == b >> 1 || runs.piece(a >> 1).look() != runs.piece(b >> 1).look()) {
            return;
        }
        double vx = runs.x(b) - runs.x(a);
        double vy = runs.y(b) - runs.y(a);
        double gap = Math.hypot(vx, vy);
        if (gap < SHORTEST_GAP_MM) {
            goesOn[a] |= runs.outX(a) * runs.outX(b) + runs.outY(a) * runs.outY(b) < -Math.cos(MOST_TURN);
            return;
        }
        if (gap > reach) {
            return;
        }
        double out = Math.atan2(runs.outX(a) * vy - runs.outY(a) * vx, runs.outX(a) * vx + runs.outY(a) * vy);
        double in = Math.atan2(-vx * runs.outY(b) + vy * runs.outX(b), -vx * runs.outX(b) - vy * runs.outY(b));
        double noise = NOISE
                + NOISE_MM
                        / Math.min(
                                runs.piece(a >> 1).lengthMm(),
                                runs.piece(b >> 1).lengthMm())
                + NOISE_MM / gap;
        double off = Math.abs(out - in);
        if (Math.max(Math.abs(out), Math.abs(in)) > MOST_TURN
                || off > Math.min(0.3, noise) + 0.2 * Math.min(Math.abs(out), Math.abs(in))) {
            return;
        }
        double cost = gap * (1 + 5 * off);
        better(a, b, cost);
        better(b, a, cost);
    }

    private void better(int end, int other, double cost) {
        if (cost < score[end] || (cost == score[end] && other < best[end])) {
            score[end] = cost;
            best[end] = other;
        }
    }

    private List<int[]> rows() {
        for (int end = 0; end < best.length; end++) {
            if (best[end] >= 0 && (best[best[end]] != end || goesOn[end] || goesOn[best[end]])) {
                score[end] = Double.NaN;
            }
        }
        for (int end = 0; end < best.length; end++) {
            if (Double.isNaN(score[end])) {
                best[end] = -1;
            }
        }
        List<int[]> rows = new ArrayList<>();
        boolean[] done = new boolean[runs.size()];
        for (int k = 0; k < runs.size(); k++) {
            if (!done[k] && (best[2 * k] >= 0 || best[2 * k + 1] >= 0)) {
                rows.add(row(beginning(k), done));
            }
        }
        return rows;
    }

    /** The end at which the first dash of a row is entered; of a ring, the one given. */
    private int beginning(int run) {
        int entered = 2 * run;
        while (best[entered] >= 0) {
            entered = best[entered] ^ 1;
            if (entered == 2 * run) {
                break;
            }
        }
        return entered;
    }

    private int[] row(int beginning, boolean[] done) {
        int[] row = new int[8];
        int count = 0;
        int entered = beginning;
        while (entered >= 0 && !done[entered >> 1]) {
            if (count == row.length) {
                row = Arrays.copyOf(row, 2 * count);
            }
            row[count++] = entered;
            done[entered >> 1] = true;
            entered = best[entered ^ 1];
        }
        return Arrays.copyOf(row, count);
    }
}
