package org.adumbrate.preflight;

import java.util.List;
import java.util.Locale;
import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.preflight.Observations.Advice;
import org.adumbrate.prepare.passes.PreparedPass;

/** Whether passes have pixels enough for their size, and lie where the lines are. */
final class PassRule implements Rule {
    /** A shadow this far off its line, in mm, shows beside a line of a building's 0.25 mm (ISO 128-2:2020). */
    private static final double MOST_RESIDUAL_MM = 0.25;

    private static final Advice SOFT =
            new Advice("pixels are made up between those of the render, so edges of shadows look soft", "");

    @Override
    public void look(CheckedSheet sheet, Observations found) {
        for (CheckedPass pass : sheet.passes()) {
            resolution(pass, sheet, found);
            double residual = pass.placement().residualMm();
            if (residual > MOST_RESIDUAL_MM) {
                found.add(
                        Severity.WARNING,
                        pass.key(),
                        List.of(pass.placement().worst()),
                        String.format(Locale.ROOT, "%s lies %.2f mm beside its lines", name(pass), residual),
                        new Advice(
                                "light and lines come apart by more than a line is wide",
                                "see it with adumbrate register LINES PASS --picture FILE.png; render it from the camera of"
                                        + " the lines"));
            }
        }
    }

    private static void resolution(CheckedPass pass, CheckedSheet sheet, Observations found) {
        double enlarged = sheet.dpi() / pass.ppi();
        String what = String.format(
                Locale.ROOT,
                "%s has %.0f pixels per inch at this size, enlarged %.1f times for %.0f; it lies within %s of its lines",
                name(pass),
                pass.ppi(),
                enlarged,
                sheet.dpi(),
                Double.isNaN(pass.placement().residualMm())
                        ? "an unknown distance"
                        : String.format(Locale.ROOT, "%.2f mm", pass.placement().residualMm()));
        int wanted = (int) Math.ceil(pass.placement().pass().width() * enlarged / 1.5 / 100) * 100;
        boolean isSoft = PreparedPass.isSoft(enlarged);
        found.add(
                isSoft ? Severity.WARNING : Severity.NOTE,
                pass.key(),
                what,
                new Advice(
                        SOFT.why(),
                        isSoft ? "render it " + wanted + " pixels wide or wider" : "nothing, up to 2 times"));
    }

    private static String name(CheckedPass pass) {
        return pass.file().getFileName().toString();
    }
}
