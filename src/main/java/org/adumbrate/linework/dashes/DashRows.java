package org.adumbrate.linework.dashes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Rows of linked dashes, each as the ends at which they are entered, in order. A row begins so that its first run goes forwards. */
final class DashRows {
    private final DashLinks links;
    private final boolean[] done;
    private final List<int[]> rows = new ArrayList<>();

    private DashRows(DashRuns runs, boolean[] used, DashLinks.GapsOfLook gaps) {
        links = new DashLinks(runs, used, gaps);
        done = new boolean[runs.size()];
    }

    /** The rows of all runs that are not used, linked across gaps of certain lengths alone. */
    static List<int[]> all(DashRuns runs, boolean[] used, DashLinks.GapsOfLook gaps) {
        DashRows found = new DashRows(runs, used, gaps);
        for (int k = 0; k < runs.size(); k++) {
            if (!used[k] && !found.done[k] && (found.links.linked(2 * k) >= 0 || found.links.linked(2 * k + 1) >= 0)) {
                found.addRowOf(k, 2);
            }
        }
        return found.rows;
    }

    /** Those of them that may be lines without others of their look to go by. */
    static List<int[]> sure(DashRuns runs, boolean[] used) {
        int[] seeds = seeds(runs, used);
        if (seeds.length == 0) {
            return List.of();
        }
        DashRows found = new DashRows(runs, used, DashLinks.GapsOfLook.ANY);
        for (int seed : seeds) {
            if (!found.done[seed >> 1] && found.links.linked(seed) >= 0 && found.links.linked(seed ^ 1) >= 0) {
                found.addRowOf(seed >> 1, Rhythm.sure(1));
            }
        }
        // in the order in which all rows are found
        found.rows.sort(Comparator.comparingInt(DashRows::least));
        return found.rows;
    }

    private static int[] seeds(DashRuns runs, boolean[] used) {
        int[] ofLook = new int[runs.looks()];
        int most = 0;
        for (int k = 0; k < runs.size(); k++) {
            most = Math.max(most, ++ofLook[runs.look(k)]);
        }
        if (most < Rhythm.sure(1)) {
            return new int[0];
        }
        MetEnds ends = new MetEnds(runs, used);
        int[] seeds = new int[runs.size()];
        int count = 0;
        for (int k = 0; k < runs.size(); k++) {
            int seed = ends.seed(k);
            if (seed >= 0 && ofLook[runs.look(k)] >= Rhythm.sure(1)) {
                seeds[count++] = seed;
            }
        }
        return Arrays.copyOf(seeds, count);
    }

    private void addRowOf(int run, int fewest) {
        int[] row = row(beginning(2 * run));
        for (int entered : row) {
            done[entered >> 1] = true;
        }
        int least = least(row);
        if (row.length >= fewest) {
            rows.add(least == run ? row : row(beginning(2 * least)));
        }
    }

    private static int least(int[] row) {
        int least = Integer.MAX_VALUE;
        for (int entered : row) {
            least = Math.min(least, entered >> 1);
        }
        return least;
    }

    /** The end at which the first dash of a row is entered; of a ring, the one given. */
    private int beginning(int given) {
        int entered = given;
        int before = links.linked(entered);
        while (before >= 0) {
            entered = before ^ 1;
            before = entered == given ? -1 : links.linked(entered);
        }
        return entered;
    }

    private int[] row(int beginning) {
        int[] row = new int[8];
        int count = 0;
        int entered = beginning;
        do {
            if (count == row.length) {
                row = Arrays.copyOf(row, 2 * count);
            }
            row[count++] = entered;
            entered = links.linked(entered ^ 1);
        } while (entered >= 0 && entered != beginning);
        return Arrays.copyOf(row, count);
    }
}
