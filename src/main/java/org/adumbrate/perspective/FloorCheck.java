package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.adumbrate.geometry.SheetPoint;

/**
 * Holds stated elevations against the floors that height lines tell by themselves. Height lines know how high the eye is above
 * each floor, so they know how far floors lie apart, and a floor that is stated elsewhere stands out among the others.
 */
public final class FloorCheck {
    /** So many lines on a floor are no accident. */
    private static final int SURE_LINES = 3;

    /** A line hidden in part may seem to stand on any floor; two do so seldom. */
    private static final int OWN_LINES = 2;

    /** Somebody who is off by less than this share has rounded the height of a person. */
    private static final double ROUNDED = 0.02;

    private static final double LEAST_SCALE = 0.5;
    private static final double MOST_SCALE = 2;

    /** Floors, and the eye, that have to agree at one scale before the height of the lines is doubted: two always do. */
    private static final int ENOUGH = 3;

    private static final int MOST_PLACES = 3;

    private final FittedHeights alone;
    private final Map<String, Double> elevations;
    private final OptionalDouble eye;
    private final Optional<FittedHeights> tied;
    private final List<FittedFloor> floors;

    private FloorCheck(
            FittedHeights alone, Map<String, Double> elevations, OptionalDouble eye, Optional<FittedHeights> tied) {
        this.alone = alone;
        this.tied = tied;
        this.elevations = elevations;
        this.eye = eye;
        floors = alone.floors().stream()
                .filter(floor -> !floor.lines().isEmpty())
                .toList();
    }

    /**
     * Where stated elevations and height lines contradict each other.
     *
     * @param alone what the lines tell without any elevation
     * @param elevationsM the stated elevations by floor, in metres
     * @param eyeHeightM the stated height of the eye above elevation 0, in metres
     * @param tied what they tell with the elevations, if they tell anything
     */
    public static List<Contradiction> of(
            FittedHeights alone,
            Map<String, Double> elevationsM,
            OptionalDouble eyeHeightM,
            Optional<FittedHeights> tied) {
        FloorCheck check = new FloorCheck(alone, elevationsM, eyeHeightM, tied);
        return elevationsM.isEmpty() || check.floors.isEmpty() ? List.of() : check.contradictions();
    }

    private List<Contradiction> contradictions() {
        List<Ladder> best = Ladder.best(1, floors, elevations, eye);
        Ladder laid = best.get(0);
        if (laid.rungs().size() == floors.size()) {
            return List.of();
        }
        Optional<Ladder> scaled = atAnotherScale(laid);
        if (scaled.isPresent()) {
            return List.of(ofHeight(scaled.get()));
        }
        boolean isUnclear = laid.rungs().size() < 2 && best.stream().anyMatch(laid::isRivalOf);
        if (isUnclear && eye.isEmpty() && elevations.size() > 1) {
            return List.of(ofDistance());
        }
        return ofFloors(laid);
    }

    /** A height of the lines at which more of what is stated agrees. */
    private Optional<Ladder> atAnotherScale(Ladder laid) {
        List<Ladder> ladders = new ArrayList<>();
        for (double scale : scales()) {
            boolean isAnother = scale > LEAST_SCALE && scale < MOST_SCALE && Math.abs(scale - 1) > ROUNDED;
            if (isAnother) {
                ladders.add(Ladder.best(scale, floors, elevations, eye).get(0));
            }
        }
        int told = eye.isPresent() ? 1 : 0;
        // one floor that is stated wrong is likelier than a wrong height that happens to bring it right
        int wrong = floors.size() - laid.rungs().size() + (laid.agreesWith(eye) ? 0 : 1);
        return ladders.stream()
                .filter(ladder -> wrong > 1
                        && ladder.agreesWith(eye)
                        && ladder.rungs().size() == floors.size()
                        && ladder.rungs().size() + told >= ENOUGH)
                .max(Comparator.comparingDouble(Ladder::worth));
    }

    private List<Double> scales() {
        List<Double> scales = new ArrayList<>();
        for (FittedFloor floor : floors) {
            for (double elevation : elevations.values()) {
                eye.ifPresent(height -> scales.add((height - elevation) / floor.eyeHeightM()));
                for (FittedFloor other : floors) {
                    for (double next : elevations.values()) {
                        scales.add((next - elevation) / (floor.eyeHeightM() - other.eyeHeightM()));
                    }
                }
            }
        }
        return scales.stream().filter(Double::isFinite).toList();
    }

    private Contradiction ofHeight(Ladder scaled) {
        double heightM = alone.heightM() * scaled.scale();
        return new Contradiction(
                "heights.height",
                String.format(
                        Locale.ROOT,
                        "heights.height says %.2f m, but by the stated elevations the lines are %.2f m tall: floors %s; state"
                                + " how tall the lines are, or put the elevations right",
                        alone.heightM(),
                        heightM,
                        floors.stream()
                                .map(floor -> String.format(
                                        Locale.ROOT,
                                        "%s %.2f m under the eye instead of %.2f m",
                                        scaled.rungs().get(floor),
                                        scaled.eyeM()
                                                - elevations.get(scaled.rungs().get(floor)),
                                        floor.eyeHeightM()))
                                .collect(Collectors.joining(", "))),
                feet(floors),
                true);
    }

    /** No two floors are stated as far apart as the lines put them, so nobody knows which is wrong. */
    private Contradiction ofDistance() {
        List<String> names = elevations.keySet().stream()
                .sorted(Comparator.comparingDouble(elevations::get))
                .toList();
        double lowest = floors.get(0).eyeHeightM();
        String told = floors.stream()
                .map(floor -> String.format(
                        Locale.ROOT,
                        "%.2f m (%s)",
                        lowest - floor.eyeHeightM(),
                        place(floor.lines().get(0))))
                .collect(Collectors.joining(", "));
        String said = names.stream()
                .map(name -> String.format(Locale.ROOT, "%s at %.2f m", name, elevations.get(name)))
                .collect(Collectors.joining(", "));
        return new Contradiction(
                "floors." + names.get(names.size() - 1),
                "floors says " + said + ", but the lines of " + heightM() + " stand on floors at " + told
                        + " above the lowest of them; put the elevations right, or heights.height",
                feet(floors),
                floors.stream()
                                .filter(floor -> floor.lines().size() >= SURE_LINES)
                                .count()
                        > 1);
    }

    /** Floors of lines that are none of the stated, each with the stated one that it seems to be. */
    private List<Contradiction> ofFloors(Ladder laid) {
        Map<String, Double> free = new HashMap<>(elevations);
        laid.rungs().values().forEach(free::remove);
        free.keySet().removeIf(this::hasItsOwnLines);
        List<Contradiction> found = new ArrayList<>();
        for (FittedFloor floor : floors) {
            if (laid.rungs().containsKey(floor)) {
                continue;
            }
            double elevation = laid.eyeM() - floor.eyeHeightM();
            Optional<String> name = Ladder.nearest(elevation, inOrder(elevation, laid, free));
            found.add(name.isPresent() ? elsewhere(floor, elevation, name.get()) : unstated(floor, elevation));
            name.ifPresent(free::remove);
        }
        return found;
    }

    /** Those of some stated floors that lie above and below the same others as an elevation does; all if there are none. */
    private Map<String, Double> inOrder(double elevation, Ladder laid, Map<String, Double> free) {
        Map<String, Double> inOrder = new HashMap<>(free);
        inOrder.values().removeIf(stated -> laid.rungs().values().stream()
                .map(elevations::get)
                .anyMatch(rung -> (rung < elevation) != (rung < stated)));
        return inOrder.isEmpty() ? free : inOrder;
    }

    private boolean hasItsOwnLines(String name) {
        return tied.flatMap(fitted -> fitted.floor(name))
                .map(floor -> floor.lines().size() >= OWN_LINES)
                .orElse(false);
    }

    private Contradiction elsewhere(FittedFloor floor, double elevation, String name) {
        return new Contradiction(
                "floors." + name,
                String.format(
                        Locale.ROOT,
                        "floors.%s says %.2f m, but %s stand at %.2f m, give or take %.2f m, by the other floors; state that"
                                + " elevation, or a floor of its own for these lines, or draw them again",
                        name,
                        elevations.get(name),
                        linesOf(floor),
                        elevation,
                        floor.eyeHeightErrorM()),
                feet(List.of(floor)),
                floor.lines().size() >= SURE_LINES);
    }

    private Contradiction unstated(FittedFloor floor, double elevation) {
        String nearest = Ladder.nearest(elevation, elevations).orElseThrow();
        return new Contradiction(
                "floors",
                String.format(
                        Locale.ROOT,
                        "floors: %s stand at %.2f m, where no floor is stated; the nearest is %s at %.2f m; state this floor,"
                                + " or look whether the lines are hidden in part",
                        linesOf(floor),
                        elevation,
                        nearest,
                        elevations.get(nearest)),
                feet(List.of(floor)),
                false);
    }

    private String heightM() {
        return String.format(Locale.ROOT, "%.2f m", alone.heightM());
    }

    private static String linesOf(FittedFloor floor) {
        String places = floor.lines().stream()
                .limit(MOST_PLACES)
                .map(line -> "(" + place(line) + ")")
                .collect(Collectors.joining(", "));
        int count = floor.lines().size();
        return (count == 1 ? "height line at " : count + " height lines at ")
                + places
                + (count > MOST_PLACES ? " ..." : "");
    }

    private static String place(HeightLine line) {
        return String.format(
                Locale.ROOT, "%.1f, %.1f", line.foot().x(), line.foot().y());
    }

    private static List<SheetPoint> feet(List<FittedFloor> floors) {
        return floors.stream()
                .flatMap(floor -> floor.lines().stream())
                .map(HeightLine::foot)
                .toList();
    }
}
