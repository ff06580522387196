package org.adumbrate.preflight;

import java.util.List;
import java.util.Locale;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.preflight.Observations.Advice;
import org.adumbrate.prepare.lines.KnownRegion;

/** Whether figures stand on their floors and pass through doors. */
final class FigureRule implements Rule {
    /** A door of common height, in metres: common practice; DIN 18101 has 1.985 to 2.11 m, ANSI/SDI A250.8 2.13 m. */
    private static final double DOOR_M = 2.10;

    /**
     * What the depth pass shows at a foot may lie farther off by this share of its distance: feet are set by hand. What lies
     * nearer hides the foot, as a wall or a bench may.
     */
    private static final double OFF_FLOOR = 0.06;

    @Override
    public void look(CheckedSheet sheet, Observations found) {
        for (CheckedFigure figure : sheet.figures()) {
            List<SheetPoint> at = List.of(figure.foot());
            if (figure.statureM() > DOOR_M) {
                found.add(
                        Severity.WARNING,
                        figure.key(),
                        at,
                        String.format(
                                Locale.ROOT,
                                "'%s' is %.2f m tall, %.1f mm on the sheet: taller than a door of 2.10 m",
                                figure.outline(),
                                figure.statureM(),
                                figure.heightMm()),
                        new Advice("people give a drawing its scale", "set stature to 1.50 to 1.95 m"));
            }
            if (isOffSheet(figure.foot(), sheet)) {
                found.add(
                        Severity.WARNING,
                        figure.key(),
                        at,
                        "'" + figure.outline() + "' stands off the sheet",
                        new Advice("it is drawn in part or not at all", "set foot within the sheet"));
            } else {
                floor(figure, sheet, at, found);
            }
        }
    }

    private static boolean isOffSheet(SheetPoint foot, CheckedSheet sheet) {
        return foot.x() < 0
                || foot.y() < 0
                || foot.x() > sheet.size().widthMm()
                || foot.y() > sheet.size().heightMm();
    }

    private static void floor(CheckedFigure figure, CheckedSheet sheet, List<SheetPoint> at, Observations found) {
        KnownRegion floor = sheet.floors().get(figure.floor());
        boolean isOutside = floor != null && !floor.region().contains(figure.foot());
        double seen = figure.seenM().orElse(figure.depthM());
        boolean isElsewhere = !(seen <= (1 + OFF_FLOOR) * figure.depthM());
        if (!isOutside && !isElsewhere) {
            return;
        }
        String what = isOutside
                ? "'%s' stands outside the outline of floor '%s'".formatted(figure.outline(), figure.floor())
                : String.format(
                        Locale.ROOT,
                        "'%s' stands %.1f m from the eye on floor '%s', where the depth pass shows something at %.1f m",
                        figure.outline(),
                        figure.depthM(),
                        figure.floor(),
                        seen);
        found.add(
                Severity.WARNING,
                figure.key(),
                at,
                what,
                new Advice(
                        "it floats before what is seen there, and has the size of another place",
                        "move foot onto the floor, or name the floor that is seen there"));
    }
}
