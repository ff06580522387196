package org.adumbrate.linework.region;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * Lines that lie inside a region, as what is seen in a room that was taken for cut. Lines along its edge do not count.
 *
 * @param lengthMm how long they are together, right to a mm or so a line
 * @param at a place on one of them, where there are most
 * @param isCrowded whether lines crowd there as in a room, rather than run through
 */
public record LinesWithin(double lengthMm, SheetPoint at, boolean isCrowded) {
    /** Nearer to the edge than this, in mm, a line may be an edge of what is cut. */
    private static final double EDGE_MM = 0.5;

    private static final double STEP_MM = 0.5;
    private static final double CURVE_TOLERANCE_MM = 0.1;

    /** How far around a place is looked for where there are most, in mm. */
    private static final double PLACE_MM = 15;

    /** Fewer lines than three across such a place may be one joint of a floor and what crosses it. */
    private static final double CROWD_MM = 3 * PLACE_MM;

    /** Those of some lines that lie inside a region; nothing if none do. */
    public static Optional<LinesWithin> of(Region<SheetPoint> region, Collection<VectorPath<SheetPoint>> lines) {
        Region<SheetPoint> inside = region.grown(-EDGE_MM);
        if (inside.isEmpty()) {
            return Optional.empty();
        }
        Found found = new Found(inside);
        for (VectorPath<SheetPoint> line : lines) {
            line.chords(CURVE_TOLERANCE_MM, found::look);
        }
        return found.most();
    }

    /** Walks along lines, and remembers by square places how much of them lies inside. */
    private static final class Found {
        private final Region<SheetPoint> inside;
        private final Map<Long, Place> places = new HashMap<>();
        private double lengthMm;

        Found(Region<SheetPoint> inside) {
            this.inside = inside;
        }

        void look(double x0, double y0, double x1, double y1) {
            double length = Math.hypot(x1 - x0, y1 - y0);
            int steps = Math.max(1, (int) Math.ceil(length / STEP_MM));
            for (int k = 0; k < steps; k++) {
                double share = (k + 0.5) / steps;
                SheetPoint at = new SheetPoint(x0 + share * (x1 - x0), y0 + share * (y1 - y0));
                if (inside.contains(at)) {
                    lengthMm += length / steps;
                    places.computeIfAbsent(place(at), key -> new Place(at)).lengthMm += length / steps;
                }
            }
        }

        private static long place(SheetPoint at) {
            return ((long) Math.floor(at.x() / PLACE_MM) << 32) + (long) Math.floor(at.y() / PLACE_MM);
        }

        Optional<LinesWithin> most() {
            return places.values().stream()
                    .max(Comparator.comparingDouble((Place place) -> place.lengthMm)
                            .thenComparingDouble(place -> place.at.x())
                            .thenComparingDouble(place -> place.at.y()))
                    .map(place -> new LinesWithin(lengthMm, place.at, place.lengthMm > CROWD_MM));
        }
    }

    private static final class Place {
        private final SheetPoint at;
        private double lengthMm;

        Place(SheetPoint at) {
            this.at = at;
        }
    }
}
