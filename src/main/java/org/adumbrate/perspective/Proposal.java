package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Which floors there are, if the horizon were known: each line then tells how high its floor lies below the eye, and floors
 * are where several lines agree. Stated floors are looked for first, as one rigid ladder; what stands on none of its rungs
 * may still make floors of its own, the best supported first.
 */
final class Proposal {
    /** Two eye heights count as different when they are this far apart, in statures: 3 cm for a person. */
    private static final double DIFFERENT = 0.02;

    /** No section shows people on more floors whose elevations nobody states. */
    static final int MOST_FLOORS = 16;

    private final List<Run> lines;
    private final List<Level> ladder;
    private final Evidence evidence;

    /**
     * @param lines what may be a line, by columns
     * @param ladder the stated floors, in group 0; empty if there are none
     */
    Proposal(List<Run> lines, List<Level> ladder, Evidence evidence) {
        this.lines = lines;
        this.ladder = ladder;
        this.evidence = evidence;
    }

    /** The best supported floors at a horizon, for each of the eye heights over the stated floors that deserve a look. */
    List<Pencil> at(double horizon, List<Double> rises) {
        if (ladder.isEmpty()) {
            return List.of(withFloorsOfTheRest(horizon, new ArrayList<>(), List.of()));
        }
        return rises.stream()
                .map(rise -> withFloorsOfTheRest(horizon, new ArrayList<>(List.of(rise)), ladder))
                .toList();
    }

    /** The eye heights above elevation 0, in statures, at which the ladder of stated floors meets most lines. */
    List<Double> rises(double horizon, int most) {
        record Rise(double value, double worth) {}
        List<Rise> all = new ArrayList<>();
        for (Run run : lines) {
            for (Level rung : ladder) {
                double rise = ratio(run.line(), horizon) + rung.offset();
                all.add(new Rise(rise, worth(horizon, rise)));
            }
        }
        all.sort(Comparator.comparingDouble(Rise::worth).reversed().thenComparingDouble(Rise::value));
        List<Double> best = new ArrayList<>();
        for (Rise rise : all) {
            boolean isNew = best.stream().allMatch(other -> Math.abs(other - rise.value()) > DIFFERENT);
            if (isNew && best.size() < most) {
                best.add(rise.value());
            }
        }
        return best;
    }

    private double worth(double horizon, double rise) {
        ToDoubleFunction<Run> onTheLadder = run -> {
            double best = 0;
            for (Level rung : ladder) {
                best = Math.max(best, worth(run, horizon, rise - rung.offset()));
            }
            return best;
        };
        return sum(Run.chosen(lines, onTheLadder), onTheLadder);
    }

    private double worth(Run run, double horizon, double ratio) {
        return evidence.of(Pencil.residual(run.line(), horizon, ratio)) - run.cost();
    }

    private static double sum(List<Run> runs, ToDoubleFunction<Run> worth) {
        return runs.stream().mapToDouble(worth).sum();
    }

    private Pencil withFloorsOfTheRest(double horizon, List<Double> rises, List<Level> stated) {
        List<Level> levels = new ArrayList<>(stated);
        List<Run> rest = new ArrayList<>(lines);
        Pencil pencil = new Pencil(horizon, rises, levels);
        double cost = stated.isEmpty() ? evidence.floorCost() : evidence.unstatedFloorCost();
        while (true) {
            Pencil soFar = pencil;
            List<Run> standing = Run.chosen(rest, run -> worth(run, soFar));
            rest.removeIf(run -> standing.stream().anyMatch(run::shares));
            double ratio = bestRatio(rest, horizon);
            if (worthOf(rest, horizon, ratio) <= cost || rises.size() > MOST_FLOORS) {
                return pencil;
            }
            levels.add(Level.alone(rises.size()));
            rises.add(ratio);
            pencil = new Pencil(horizon, rises, levels);
        }
    }

    private double worth(Run run, Pencil pencil) {
        double best = 0;
        for (Level level : pencil.levels()) {
            best = Math.max(best, worth(run, pencil.horizon(), pencil.ratio(level)));
        }
        return best;
    }

    /** The eye height in statures above the floor that explains most of the lines. */
    private double bestRatio(List<Run> rest, double horizon) {
        double best = 0;
        double most = -1;
        for (Run run : rest) {
            double ratio = ratio(run.line(), horizon);
            double worth = worthOf(rest, horizon, ratio);
            if (worth > most) {
                most = worth;
                best = ratio;
            }
        }
        return settled(rest, horizon, best);
    }

    /** The mean of the lines that agree with an eye height, each weighed by how exactly it tells it. */
    private double settled(List<Run> rest, double horizon, double ratio) {
        double above = 0;
        double below = 0;
        for (Run run : Run.chosen(rest, one -> worth(one, horizon, ratio))) {
            double height = run.line().heightMm();
            above += height * (run.line().foot().y() - horizon);
            below += height * height;
        }
        return below > 0 ? above / below : ratio;
    }

    private double worthOf(List<Run> some, double horizon, double ratio) {
        ToDoubleFunction<Run> here = run -> worth(run, horizon, ratio);
        return sum(Run.chosen(some, here), here);
    }

    private static double ratio(HeightLine line, double horizon) {
        return (line.foot().y() - horizon) / line.heightMm();
    }
}
