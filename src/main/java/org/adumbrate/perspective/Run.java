package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Pieces of one upright taken for one height line, from the head of the topmost to the foot of the lowest.
 *
 * @param line what they would be together
 * @param column the place among all columns of the column in which they stand
 * @param pieces a bit for each of the column's pieces that belongs to it
 * @param cost how unlikely it is that these pieces and no others are one line, as a logarithm; 0 where they stand alone
 */
record Run(HeightLine line, int column, long pieces, double cost) {
    /** True if a piece would belong to both. */
    boolean shares(Run other) {
        return column == other.column && (pieces & other.pieces) != 0;
    }

    /**
     * Those of some runs that are worth most together, where no piece belongs to two: in each column the best first.
     *
     * @param runs ordered by column
     * @param worth of a run; what is worth nothing is not chosen
     */
    static List<Run> chosen(List<Run> runs, ToDoubleFunction<Run> worth) {
        List<Run> chosen = new ArrayList<>();
        for (int from = 0, to; from < runs.size(); from = to) {
            to = from + 1;
            while (to < runs.size() && runs.get(to).column() == runs.get(from).column()) {
                to++;
            }
            choose(runs.subList(from, to), worth, chosen);
        }
        return chosen;
    }

    private static void choose(List<Run> column, ToDoubleFunction<Run> worth, List<Run> chosen) {
        double[] worths = new double[column.size()];
        for (int k = 0; k < worths.length; k++) {
            worths[k] = worth.applyAsDouble(column.get(k));
        }
        long taken = 0;
        while (true) {
            int best = -1;
            for (int k = 0; k < worths.length; k++) {
                boolean isFree = (column.get(k).pieces() & taken) == 0;
                if (isFree && worths[k] > 0 && (best < 0 || worths[k] > worths[best])) {
                    best = k;
                }
            }
            if (best < 0) {
                return;
            }
            chosen.add(column.get(best));
            taken |= column.get(best).pieces();
        }
    }
}
