package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Holds a stated camera against where the lines of the drawing meet. Level edges along the model's axes vanish on the horizon,
 * those along +Y at principal - focal tan(turn) and those along +X at principal + focal / tan(turn).
 */
public final class ViewCheck {
    /** A point that lies farther than this from the horizon is none of level edges, in mm or in standard errors. */
    private static final double ON_HORIZON_MM = 1;

    private static final double SURE = 3;

    /** A point that is less sure than this may lie on the horizon or not. */
    private static final double WORST_MM = 3;

    /** A focal length that differs by less, as a share, is the stated one. */
    private static final double ONE_FOCAL = 0.01;

    /** Directions that differ by less are one, in radians: half a degree. */
    private static final double ONE_DIRECTION = Math.toRadians(0.5);

    /** A second point is that of a second direction if it is worth this share of the first; less is furniture set askew. */
    private static final double SECOND = 0.25;

    private ViewCheck() {}

    /**
     * The points of one or two main directions.
     *
     * @param level points on the horizon, the one worth most first
     */
    public static List<VanishingPoint> directions(List<VanishingPoint> level) {
        return level.stream()
                .filter(point -> point.worth() > SECOND * level.get(0).worth())
                .limit(2)
                .toList();
    }

    /** Those of some points that lie on a horizon, the one worth most first. */
    public static List<VanishingPoint> onHorizon(List<VanishingPoint> meeting, double horizonMm) {
        return meeting.stream()
                .filter(point -> point.yErrorMm() <= WORST_MM
                        && Math.abs(point.at().y() - horizonMm) <= Math.max(ON_HORIZON_MM, SURE * point.yErrorMm()))
                .sorted(Comparator.comparingDouble(VanishingPoint::worth).reversed())
                .toList();
    }

    /**
     * Whether level edges meet where a camera that is stated in full says.
     *
     * @param meeting where lines of the drawing meet
     */
    public static Optional<Contradiction> of(View view, List<VanishingPoint> meeting) {
        List<VanishingPoint> level = onHorizon(meeting, view.horizonMm());
        if (level.isEmpty() || level.stream().anyMatch(point -> isAlongAnAxis(view, point))) {
            return Optional.empty();
        }
        VanishingPoint most = level.get(0);
        double direction = direction(view, most);
        // the axis that needs the smaller turn
        double turn =
                Math.abs(direction) <= Math.PI / 4 ? -direction : Math.copySign(Math.PI / 2, direction) - direction;
        List<String> ways = new ArrayList<>();
        ways.add(String.format(Locale.ROOT, "a turn of %.1f deg", Math.toDegrees(turn)));
        if (Math.abs(view.turn()) < ONE_DIRECTION) {
            ways.add(String.format(
                    Locale.ROOT, "a principal-point at x %.1f mm", most.at().x()));
        } else {
            level.stream()
                    .skip(1)
                    .findFirst()
                    .flatMap(other -> TwoPoints.of(view.principal().x(), most, other))
                    .filter(both -> Math.abs(both.focalMm() / view.focalMm() - 1) > ONE_FOCAL)
                    .ifPresent(both -> ways.add(String.format(
                            Locale.ROOT,
                            "a focal length of %.1f mm with a turn of %.1f deg",
                            both.focalMm(),
                            Math.toDegrees(both.turn()))));
        }
        return Optional.of(new Contradiction(
                "camera",
                String.format(
                        Locale.ROOT,
                        "camera: level edges along the model's axes would meet at x %.1f mm on the horizon, by principal-point,"
                                + " focal length and turn, but %d lines of the drawing meet at x %.1f mm; that would be %s;"
                                + " put the camera right, unless the building stands askew to the model's axes",
                        view.principal().x() - view.focalMm() * Math.tan(view.turn()),
                        most.lines(),
                        most.at().x(),
                        String.join(", or ", ways)),
                List.of(),
                false));
    }

    private static boolean isAlongAnAxis(View view, VanishingPoint point) {
        double off = direction(view, point) + view.turn();
        double quarters = Math.rint(off / (Math.PI / 2));
        return Math.abs(off - quarters * Math.PI / 2) <= ONE_DIRECTION;
    }

    /** Where level edges that meet at a point run, in radians to the right of the viewing direction. */
    private static double direction(View view, VanishingPoint point) {
        return Math.atan2(point.at().x() - view.principal().x(), view.focalMm());
    }
}
