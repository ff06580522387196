package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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

    private final List<HeightLine> lines;
    private final List<Level> ladder;
    private final Evidence evidence;

    /**
     * @param ladder the stated floors, in group 0; empty if there are none
     */
    Proposal(List<HeightLine> lines, List<Level> ladder, Evidence evidence) {
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
        for (HeightLine line : lines) {
            for (Level rung : ladder) {
                double rise = ratio(line, horizon) + rung.offset();
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
        double worth = 0;
        for (HeightLine line : lines) {
            double best = 0;
            for (Level rung : ladder) {
                best = Math.max(best, evidence.of(Pencil.residual(line, horizon, rise - rung.offset())));
            }
            worth += best;
        }
        return worth;
    }

    private Pencil withFloorsOfTheRest(double horizon, List<Double> rises, List<Level> stated) {
        List<Level> levels = new ArrayList<>(stated);
        List<HeightLine> rest = new ArrayList<>(lines);
        Pencil pencil = new Pencil(horizon, rises, levels);
        double cost = stated.isEmpty() ? evidence.floorCost() : evidence.unstatedFloorCost();
        while (true) {
            Pencil soFar = pencil;
            rest.removeIf(line -> isExplained(line, soFar));
            double ratio = bestRatio(rest, horizon);
            if (worthOf(rest, horizon, ratio) <= cost || rises.size() > MOST_FLOORS) {
                return pencil;
            }
            levels.add(Level.alone(rises.size()));
            rises.add(ratio);
            pencil = new Pencil(horizon, rises, levels);
        }
    }

    private boolean isExplained(HeightLine line, Pencil pencil) {
        return pencil.levels().stream().anyMatch(level -> evidence.of(pencil.residual(line, level)) > 0);
    }

    /** The eye height in statures above the floor that explains most of the lines. */
    private double bestRatio(List<HeightLine> rest, double horizon) {
        double best = 0;
        double most = -1;
        for (HeightLine line : rest) {
            double ratio = ratio(line, horizon);
            double worth = worthOf(rest, horizon, ratio);
            if (worth > most) {
                most = worth;
                best = ratio;
            }
        }
        return settled(rest, horizon, best);
    }

    /** The mean of the lines that agree with an eye height, each weighed by how exactly it tells it. */
    private double settled(List<HeightLine> rest, double horizon, double ratio) {
        double above = 0;
        double below = 0;
        for (HeightLine line : rest) {
            if (evidence.of(Pencil.residual(line, horizon, ratio)) > 0) {
                above += line.heightMm() * (line.foot().y() - horizon);
                below += line.heightMm() * line.heightMm();
            }
        }
        return below > 0 ? above / below : ratio;
    }

    private double worthOf(List<HeightLine> some, double horizon, double ratio) {
        double worth = 0;
        for (HeightLine line : some) {
            worth += evidence.of(Pencil.residual(line, horizon, ratio));
        }
        return worth;
    }

    private static double ratio(HeightLine line, double horizon) {
        return (line.foot().y() - horizon) / line.heightMm();
    }
}
