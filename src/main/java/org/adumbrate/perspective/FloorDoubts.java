package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.adumbrate.geometry.SheetPoint;

/**
 * What is odd about floors that nobody states. Lines that are hidden alike, as behind a railing, seem to stand on a floor of
 * their own: it lies where no floor can be, or few lines make it.
 */
public final class FloorDoubts {
    /** A floor farther than this from the next, in metres, has a hall of two high storeys between them, or is none. */
    private static final double FARTHEST_M = 8;

    /** Steps rise no more than this, in metres: three risers of 0.17 m (common practice). */
    private static final double STEPS_M = 0.5;

    /** People stand upright under this, in metres (common practice for headroom). */
    private static final double HEADROOM_M = 2;

    private static final int FEW_LINES = 2;
    private static final double ALIKE = 1.03;

    private FloorDoubts() {}

    /**
     * A doubt.
     *
     * @param floor which floor
     * @param text what is odd, the lines that make the floor, and what to do
     */
    public record Doubt(FittedFloor floor, String text) {
        /** Where its lines stand. */
        public List<SheetPoint> at() {
            return floor.lines().stream().map(HeightLine::foot).toList();
        }
    }

    /** What is odd about the floors on which lines stand. */
    public static List<Doubt> of(FittedHeights heights) {
        List<FittedFloor> floors = heights.floors().stream()
                .filter(floor -> !floor.lines().isEmpty())
                .toList();
        List<Doubt> doubts = new ArrayList<>();
        for (int k = 0; k < floors.size(); k++) {
            FittedFloor floor = floors.get(k);
            Optional<FittedFloor> next = next(floors, k);
            if (next.isPresent()) {
                double apart = Math.abs(next.get().eyeHeightM() - floor.eyeHeightM());
                boolean isFew = floor.lines().size() <= FEW_LINES && areAlike(floor.lines());
                boolean isFar = apart > FARTHEST_M
                        && floor.lines().size() <= next.get().lines().size();
                if (isFar || (isFew && apart > STEPS_M && apart < HEADROOM_M)) {
                    doubts.add(new Doubt(floor, text(floor, next.get(), apart, isFar)));
                }
            }
        }
        return doubts;
    }

    /** Lines of one length stand at one distance, and are hidden alike by what stands there. */
    private static boolean areAlike(List<HeightLine> lines) {
        double least = lines.stream().mapToDouble(HeightLine::heightMm).min().orElse(0);
        double most = lines.stream().mapToDouble(HeightLine::heightMm).max().orElse(0);
        return most <= ALIKE * least;
    }

    private static Optional<FittedFloor> next(List<FittedFloor> floors, int k) {
        Optional<FittedFloor> below = k > 0 ? Optional.of(floors.get(k - 1)) : Optional.empty();
        Optional<FittedFloor> above = k + 1 < floors.size() ? Optional.of(floors.get(k + 1)) : Optional.empty();
        if (below.isEmpty() || above.isEmpty()) {
            return below.or(() -> above);
        }
        double eye = floors.get(k).eyeHeightM();
        return below.get().eyeHeightM() - eye < eye - above.get().eyeHeightM() ? below : above;
    }

    private static String text(FittedFloor floor, FittedFloor next, double apart, boolean isFar) {
        return String.format(
                Locale.ROOT,
                "%s lies %.2f m %s %s, %s; made by the lines at %s; if these are hidden in part, draw others on their floor, or"
                        + " state the floors' elevations",
                floor.name(),
                apart,
                floor.eyeHeightM() > next.eyeHeightM() ? "below" : "above",
                next.name(),
                isFar ? "farther than floors lie apart" : "too much for steps and too little for a storey",
                floor.lines().stream()
                        .map(line -> String.format(
                                Locale.ROOT,
                                "(%.1f, %.1f)",
                                line.foot().x(),
                                line.foot().y()))
                        .collect(Collectors.joining(", ")));
    }
}
