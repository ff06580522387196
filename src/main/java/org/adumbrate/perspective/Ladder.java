package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Stated elevations laid against the floors of height lines that were fitted without them.
 *
 * @param eyeM the eye's height above elevation 0 at which they are laid
 * @param scale what the fitted heights are multiplied by
 * @param rungs each floor that is one of the stated, with the stated name
 * @param worth how many lines stand on these floors, those that stand exactly there for more
 */
record Ladder(double eyeM, double scale, Map<FittedFloor, String> rungs, double worth) {
    /** A floor is a stated one if its elevation differs by no more than this, in metres: elevations are rounded. */
    private static final double LEAST_M = 0.1;

    /** Or by no more than this share of the eye's height above it: how tall people are drawn is rounded too. */
    private static final double SHARE = 0.02;

    private static final double SURE = 3;

    private static final double EYE_IN_LINES = 4;

    /** Two ways to lay the ladder put the eye elsewhere if it differs by this, in metres. */
    private static final double ELSEWHERE_M = 0.1;

    /** Lays the ladder so that the eye is at a height. */
    static Ladder at(double eyeM, double scale, List<FittedFloor> floors, Map<String, Double> elevationsM) {
        Map<FittedFloor, String> rungs = new LinkedHashMap<>();
        Map<String, Double> free = new HashMap<>(elevationsM);
        double worth = 0;
        for (FittedFloor floor : floors) {
            double elevation = eyeM - scale * floor.eyeHeightM();
            Optional<String> nearest = nearest(elevation, free);
            double off = nearest.map(name -> (free.get(name) - elevation) / allowed(floor))
                    .orElse(Double.POSITIVE_INFINITY);
            if (Math.abs(off) <= 1) {
                rungs.put(floor, nearest.orElseThrow());
                free.remove(nearest.orElseThrow());
                worth += floor.lines().size() * (1 - off * off);
            }
        }
        return new Ladder(eyeM, scale, rungs, worth);
    }

    private static double allowed(FittedFloor floor) {
        return Math.max(LEAST_M, Math.max(SURE * floor.eyeHeightErrorM(), SHARE * Math.abs(floor.eyeHeightM())));
    }

    /** The stated floor whose elevation is nearest. */
    static Optional<String> nearest(double elevationM, Map<String, Double> elevationsM) {
        return elevationsM.keySet().stream()
                .min(Comparator.comparingDouble((String name) -> Math.abs(elevationsM.get(name) - elevationM))
                        .thenComparing(name -> name));
    }

    /**
     * The ways to lay it, the one worth most first; never empty if there are floors.
     *
     * @param eyeM the stated height of the eye, which counts as much as some lines
     */
    static List<Ladder> best(
            double scale, List<FittedFloor> floors, Map<String, Double> elevationsM, OptionalDouble eyeM) {
        List<Ladder> all = new ArrayList<>();
        eyeM.ifPresent(eye -> all.add(at(eye, scale, floors, elevationsM)));
        for (FittedFloor floor : floors) {
            for (double elevation : elevationsM.values()) {
                all.add(at(elevation + scale * floor.eyeHeightM(), scale, floors, elevationsM));
            }
        }
        Comparator<Ladder> byWorth =
                Comparator.comparingDouble(ladder -> ladder.worth() + (ladder.agreesWith(eyeM) ? EYE_IN_LINES : 0));
        all.sort(byWorth.reversed());
        return all;
    }

    /** True if the eye is where it is stated, or not stated. */
    boolean agreesWith(OptionalDouble eye) {
        return eye.isEmpty() || Math.abs(eye.getAsDouble() - eyeM) <= ELSEWHERE_M;
    }

    /** True if another way to lay it has the eye at another height, and as many floors. */
    boolean isRivalOf(Ladder other) {
        return Math.abs(other.eyeM - eyeM) > ELSEWHERE_M && rungs.size() == other.rungs.size();
    }
}
