package org.adumbrate.preflight;

import java.util.Locale;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.perspective.SunAt;
import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.preflight.Observations.Advice;
import org.adumbrate.sheetfile.Sun;

/** Whether the sun is up, and high enough for shadows that end somewhere. */
final class SunRule implements Rule {
    /** At 2 degrees a shadow is 29 times as long as what casts it, and the air shifts the sun by a seventh of that. */
    private static final double LOW_DEG = 2;

    @Override
    public void look(CheckedSheet sheet, Observations found) {
        Optional<Sun> sun = sheet.asked().sheet().sun();
        if (sun.isEmpty() || sun.get() instanceof Sun.BySample) {
            return;
        }
        double altitude;
        try {
            altitude = altitude(sun.get());
        } catch (Refusal reason) {
            found.add(
                    Severity.ERROR,
                    "sun",
                    Clauses.first(reason.getMessage()),
                    new Advice("no shadow can be computed", Clauses.last(reason.getMessage(), "give another time")));
            return;
        }
        if (altitude <= 0) {
            found.add(
                    Severity.ERROR,
                    "sun",
                    String.format(Locale.ROOT, "the sun stands %.1f degrees below the horizon", -altitude),
                    new Advice("it casts no shadows", "give another time; see adumbrate sun"));
        } else if (altitude < LOW_DEG) {
            found.add(
                    Severity.WARNING,
                    "sun",
                    String.format(Locale.ROOT, "the sun stands %.1f degrees high", altitude),
                    new Advice("shadows are some thirty times as long as what casts them", "give a higher sun"));
        }
    }

    private static double altitude(Sun sun) throws Refusal {
        if (sun instanceof Sun.ByTime time) {
            return SunAt.of(
                            time.at(),
                            time.place().latitude().degrees(),
                            time.place().longitude().degrees())
                    .altitudeDeg();
        }
        return ((Sun.ByAngles) sun).altitude().degrees();
    }
}
