package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.List;

/**
 * The uprights of a drawing and what may be a height line among them.
 *
 * @param columns the pieces
 * @param runs all that may be one line, by columns
 * @param likely those of them that are about as likely as any other of their column
 */
record Uprights(List<Column> columns, List<Run> runs, List<Run> likely) {
    /** No line is worth more than this, so a run that costs as much is never one. */
    private static final double MOST_COST = 6;

    /** A run e^1.5 times less likely than what else it may be is not looked at first. */
    private static final double LIKELY_COST = 1.5;

    /** What may be a line among some pieces. */
    static Uprights of(List<HeightLine> pieces) {
        List<Column> columns = Column.of(pieces);
        List<Run> runs = new ArrayList<>();
        for (int k = 0; k < columns.size(); k++) {
            runs.addAll(columns.get(k).runs(k, MOST_COST));
        }
        return new Uprights(
                columns,
                runs,
                runs.stream().filter(run -> run.cost() <= LIKELY_COST).toList());
    }

    /** The same with fewer things that may be a line. */
    Uprights among(List<Run> few) {
        return new Uprights(columns, few, few);
    }

    /** The lines on the floors of a pencil, each on the nearest: those readings of the pieces that are worth most. */
    List<Standing> standings(Pencil pencil, Evidence evidence) {
        return Run.chosen(runs, run -> worth(run, pencil, evidence)).stream()
                .map(run -> new Standing(run, pencil.nearest(run.line())))
                .toList();
    }

    private static double worth(Run run, Pencil pencil, Evidence evidence) {
        int level = pencil.nearest(run.line());
        return level < 0
                ? 0
                : evidence.of(pencil.residual(run.line(), pencil.levels().get(level))) - run.cost();
    }

    /** The lines on no floor, as whole as their pieces suggest. */
    List<HeightLine> strays(List<Standing> standings) {
        long[] taken = new long[columns.size()];
        standings.forEach(
                standing -> taken[standing.run().column()] |= standing.run().pieces());
        List<HeightLine> strays = new ArrayList<>();
        for (int k = 0; k < taken.length; k++) {
            strays.addAll(columns.get(k).rest(taken[k]));
        }
        return strays;
    }
}
