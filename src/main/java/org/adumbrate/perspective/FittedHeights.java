package org.adumbrate.perspective;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;

/**
 * Horizon and floors, fitted to height lines.
 *
 * @param heightM how tall the lines are, in metres
 * @param horizonMm the sheet y of the horizon
 * @param horizonErrorMm its standard error; 0 where it was stated
 * @param floors from the lowest up
 */
public record FittedHeights(double heightM, double horizonMm, double horizonErrorMm, List<FittedFloor> floors) {
    /** Copies the list. */
    public FittedHeights {
        floors = List.copyOf(floors);
    }

    /** The floor of a name. */
    public Optional<FittedFloor> floor(String name) {
        return floors.stream().filter(floor -> floor.name().equals(name)).findFirst();
    }

    /** The lines that stand on no floor. */
    public List<HeightLine> outliers() {
        return floors.stream().flatMap(floor -> floor.outliers().stream()).toList();
    }

    /**
     * The only floor that can be seen at a point.
     *
     * @throws Refusal if there is none, or more than one
     */
    public FittedFloor floorAt(SheetPoint foot) throws Refusal {
        List<FittedFloor> seen = floors.stream()
                .filter(floor -> floor.isSeenAt(foot.y(), horizonMm))
                .toList();
        if (seen.size() == 1) {
            return seen.get(0);
        }
        if (seen.isEmpty()) {
            throw new Refusal(told(foot) + " shows none of the floors (" + names(floors) + "): the horizon is at y "
                    + mm(horizonMm) + ", floors below the eye are seen below it and floors above the eye above it");
        }
        throw new Refusal(told(foot) + " may show any of " + names(seen) + ", and a figure is of another size on each;"
                + " say which floor it stands on");
    }

    /**
     * Where the head of a figure is seen: straight above the foot, by stature / eye height of the foot's distance from the
     * horizon (Criminisi, Reid and Zisserman, 2000).
     *
     * @param foot where the figure stands
     * @param statureM how tall it is, in metres, above zero
     * @param floor the floor on which it stands
     * @throws Refusal if no point of the floor is seen there
     */
    public SheetPoint figure(SheetPoint foot, double statureM, FittedFloor floor) throws Refusal {
        if (floor.isEdgeOn()) {
            throw new Refusal(
                    "floor '" + floor.name() + "' is level with the eye to " + mm(1000 * floor.eyeHeightErrorM())
                            + " mm, so it is seen edge-on and a foot on it does not tell how far off a figure stands");
        }
        if (!floor.isSeenAt(foot.y(), horizonMm)) {
            boolean isBelow = floor.eyeHeightM() > 0;
            throw new Refusal("no point of floor '" + floor.name() + "' is seen at " + told(foot) + ": it lies "
                    + (isBelow ? "below" : "above") + " the eye, so a foot on it is seen "
                    + (isBelow ? "below" : "above")
                    + " the horizon, which is at y " + mm(horizonMm));
        }
        return new SheetPoint(foot.x(), foot.y() - statureM / floor.eyeHeightM() * (foot.y() - horizonMm));
    }

    private static String names(List<FittedFloor> some) {
        return some.stream().map(FittedFloor::name).collect(Collectors.joining(", "));
    }

    private static String told(SheetPoint point) {
        return "(" + mm(point.x()) + ", " + mm(point.y()) + ")";
    }

    private static String mm(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }
}
