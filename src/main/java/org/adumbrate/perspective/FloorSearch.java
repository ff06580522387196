package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Finds horizon and floors among height lines of which some stand on no floor. Any two lines that stand on one floor, or on
 * two whose elevations are known, settle a horizon; the horizons of many pairs are tried, the floors are told apart at each,
 * and the best are fitted to all lines that agree (as in Fischler and Bolles, "Random sample consensus", Communications of
 * the ACM 24(6), 1981, with nearly all pairs instead of a few).
 */
final class FloorSearch {
    /** How far off lines may be drawn, in mm; the reading that is worth most settles it. */
    private static final List<Double> SIGMAS = List.of(0.07, 0.14, 0.28, 0.56);

    /** A horizon farther off than this, in mm, belongs to no drawing. */
    private static final double FARTHEST_MM = 1e5;

    private static final int MOST_HORIZONS = 600;
    private static final int MOST_LINES = 120;
    private static final int REFINED = 16;
    private static final int RISES_TRIED = 4;
    private static final int MOST_ROUNDS = 6;
    private static final double DIFFERENT_MM = 0.2;

    private final Uprights lines;
    private final List<Run> few;
    private final List<Level> ladder;
    private final Optional<KnownHorizon> horizon;
    private final Optional<Double> rise;
    private final PencilFit.Known known;

    /**
     * @param ladder the stated floors
     * @param horizon the horizon, if it is known
     * @param rise the eye's height above elevation 0 in statures, if it is known
     * @param costOfUnknown what it costs not to know the horizon though there are some that might be it
     */
    FloorSearch(
            Uprights lines,
            List<Level> ladder,
            Optional<KnownHorizon> horizon,
            Optional<Double> rise,
            double costOfUnknown) {
        this.lines = lines;
        few = thinned(lines.likely());
        this.ladder = ladder;
        this.horizon = horizon;
        this.rise = rise;
        known = new PencilFit.Known(horizon, rise.isPresent(), costOfUnknown);
    }

    /** Readings of the lines, the one worth most first; never empty. */
    List<Reading> readings() {
        List<Double> horizons = horizon.map(known -> List.of(known.mm())).orElseGet(this::candidates);
        List<Reading> all = new ArrayList<>();
        for (double sigma : SIGMAS) {
            all.addAll(readings(horizons, sigma));
        }
        return byWorth(all);
    }

    /** Some readings, the one worth most first. */
    static List<Reading> byWorth(List<Reading> readings) {
        record Judged(Reading reading, double worth) {}
        return readings.stream()
                .map(reading -> new Judged(reading, reading.worth()))
                .sorted(Comparator.comparingDouble(Judged::worth).reversed())
                .map(Judged::reading)
                .toList();
    }

    /** The same reading without floors that chance may have made. */
    static Reading beyondChance(Reading reading, Uprights lines) {
        List<Standing> kept = reading.standingsBeyondChance(lines);
        if (kept.size() == reading.standings().size()) {
            return reading;
        }
        PencilFit fit = PencilFit.of(kept, reading.pencil(), reading.known());
        return new Reading(fit, kept, reading.evidence(), reading.known());
    }

    private List<Reading> readings(List<Double> horizons, double sigma) {
        // a horizon from two lines alone is rough, so the floors at it are too
        Evidence rough = new Evidence(sigma).twiceAsRough();
        Proposal proposal = new Proposal(few, ladder, rough);
        record Scanned(double horizon, double worth) {}
        List<Scanned> scanned = new ArrayList<>();
        for (double at : horizons) {
            scanned.add(new Scanned(at, best(proposal, at, rough)));
        }
        scanned.sort(Comparator.comparingDouble(Scanned::worth).reversed().thenComparingDouble(Scanned::horizon));
        List<Double> chosen = new ArrayList<>();
        for (Scanned one : scanned) {
            boolean isNew = chosen.stream().allMatch(other -> Math.abs(other - one.horizon()) > DIFFERENT_MM);
            if (isNew && chosen.size() < REFINED) {
                chosen.add(one.horizon());
            }
        }
        Proposal fine = new Proposal(lines.likely(), ladder, new Evidence(sigma));
        List<Reading> readings = new ArrayList<>();
        for (double at : chosen) {
            for (Pencil start : proposal.at(at, rises(proposal, at, RISES_TRIED))) {
                readings.add(refined(start, fine, new Evidence(sigma)));
            }
        }
        return readings;
    }

    private double best(Proposal proposal, double at, Evidence evidence) {
        double best = Double.NEGATIVE_INFINITY;
        for (Pencil pencil : proposal.at(at, rises(proposal, at, 1))) {
            PencilFit unfitted = new PencilFit(pencil, 0, List.of());
            best = Math.max(
                    best,
                    Reading.of(lines.among(few), unfitted, evidence, known).worth());
        }
        return best;
    }

    private List<Double> rises(Proposal proposal, double at, int most) {
        return rise.map(List::of).orElseGet(() -> proposal.rises(at, most));
    }

    /** Fits the floors to the lines on them, and looks again who stands where, until nobody moves. */
    private Reading refined(Pencil start, Proposal proposal, Evidence evidence) {
        List<Standing> standings = lines.standings(start, evidence.twiceAsRough());
        Reading best = fitted(standings, start, evidence);
        Reading latest = best;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<Double> rises =
                    ladder.isEmpty() ? List.of() : latest.pencil().rises().subList(0, 1);
            Pencil pencil = proposal.at(latest.pencil().horizon(), rises).get(0);
            List<Standing> moved = lines.standings(pencil, evidence);
            if (moved.equals(standings)) {
                break;
            }
            standings = moved;
            latest = fitted(standings, pencil, evidence);
            if (latest.worth() > best.worth()) {
                best = latest;
            }
        }
        return best;
    }

    private Reading fitted(List<Standing> standings, Pencil start, Evidence evidence) {
        return Reading.of(lines, PencilFit.of(standings, start, known), evidence, known);
    }

    /** The horizons that pairs of lines settle, all of them or a fixed choice among them. */
    private List<Double> candidates() {
        List<Run> some = few;
        List<Double> horizons = new ArrayList<>();
        Random order = new Random(1981);
        List<Level> floors = ladder.isEmpty() ? List.of(Level.alone(0)) : ladder;
        int pairs = some.size() * (some.size() - 1) / 2 * floors.size() * floors.size();
        double share = Math.min(1, (double) MOST_HORIZONS / Math.max(1, pairs));
        for (int i = 0; i < some.size(); i++) {
            for (int j = i + 1; j < some.size(); j++) {
                for (Level a : floors) {
                    for (Level b : floors) {
                        if (share == 1 || order.nextDouble() < share) {
                            horizonOf(some.get(i).line(), a, some.get(j).line(), b)
                                    .ifPresent(horizons::add);
                        }
                    }
                }
            }
        }
        return horizons.isEmpty() ? List.of(some.get(0).line().head().y()) : horizons;
    }

    /** Where f - (rise - offset) h gives the same horizon for both lines. */
    private static Optional<Double> horizonOf(HeightLine one, Level a, HeightLine other, Level b) {
        double h = one.heightMm();
        double k = other.heightMm();
        double rise = (one.foot().y() - other.foot().y() + a.offset() * h - b.offset() * k) / (h - k);
        double horizon = one.foot().y() - (rise - a.offset()) * h;
        return Math.abs(horizon) <= FARTHEST_MM ? Optional.of(horizon) : Optional.empty();
    }

    /** At most so many lines, spread over all: enough to try horizons by. */
    private static List<Run> thinned(List<Run> lines) {
        if (lines.size() <= MOST_LINES) {
            return lines;
        }
        List<Run> some = new ArrayList<>();
        for (int k = 0; k < MOST_LINES; k++) {
            some.add(lines.get((int) ((long) k * lines.size() / MOST_LINES)));
        }
        return some;
    }
}
