package org.adumbrate.prepare.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.FittedFloor;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.perspective.HeightLine;
import org.adumbrate.prepare.finding.Finding;

/**
 * Holds figures against the height lines beside them: whoever stands next to a line and is of quite another size stands on
 * another floor, as where two floors' elevations are swapped. The lines alone cannot tell which floor has which name.
 */
final class BesideLines {
    /** A line is beside a figure within this share of its own length. */
    private static final double BESIDE = 0.5;

    /** Lines of the figure's own floor may not be nearer than so many times that. */
    private static final double OWN_FARTHER = 3;

    /** Sizes may differ by this factor: the two need not stand at quite the same distance. */
    private static final double OTHER_SIZE = 1.3;

    private BesideLines() {}

    /** A height line and its floor. */
    private record Beside(FittedFloor floor, HeightLine line, double apartMm) {}

    /** Figures that contradict the lines beside them. */
    static List<Finding> of(FittedHeights heights, List<StandingItem> figures) {
        List<Finding> findings = new ArrayList<>();
        for (StandingItem figure : figures) {
            contradiction(heights, figure).ifPresent(findings::add);
        }
        return findings;
    }

    private static Optional<Finding> contradiction(FittedHeights heights, StandingItem item) {
        SheetPoint foot = item.figure().spot().foot();
        List<Beside> all = heights.floors().stream()
                .flatMap(floor -> floor.lines().stream()
                        .map(line -> new Beside(floor, line, line.foot().distanceTo(foot))))
                .sorted(Comparator.comparingDouble(Beside::apartMm))
                .toList();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        Beside nearest = all.get(0);
        boolean isOnThatFloor = all.stream()
                .anyMatch(one ->
                        one.floor().name().equals(item.floor()) && one.apartMm() <= OWN_FARTHER * nearest.apartMm());
        double drawn = item.figure().spot().mmPerMetre();
        double told = nearest.line().heightMm() / heights.heightM();
        boolean isOtherSize = Math.max(drawn / told, told / drawn) > OTHER_SIZE;
        if (isOnThatFloor
                || !isOtherSize
                || nearest.apartMm() > BESIDE * nearest.line().heightMm()) {
            return Optional.empty();
        }
        double stature = item.figure().stance().statureM();
        SheetPoint at = nearest.line().foot();
        return Optional.of(new Finding(
                Finding.Severity.WARNING,
                item.key(),
                String.format(
                        Locale.ROOT,
                        "%s: on floor '%s' it is %.1f mm tall, but by the height line beside it, at (%.1f, %.1f) on '%s', it"
                                + " would be %.1f mm; name the floor that it stands on, or look whether the elevations of the two"
                                + " are swapped",
                        item.key(),
                        item.floor(),
                        stature * drawn,
                        at.x(),
                        at.y(),
                        nearest.floor().name(),
                        stature * told),
                List.of(foot)));
    }
}
