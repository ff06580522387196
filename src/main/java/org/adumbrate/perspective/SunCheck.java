package org.adumbrate.perspective;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.fault.Refusal;

/** Whether the shadows on the drawing and a sun that is stated tell of one and the same sun. */
public final class SunCheck {
    private static final double MOST_DEGREES = 2;
    private static final double MOST_MM = 1;

    private SunCheck() {}

    /**
     * Compares a stated sun with samples. The view must be the true one: by a guessed focal length the samples tell of another
     * sun.
     *
     * @param stated the sun by its angles or by place and time; it must be up
     * @param samples shadows on the drawing, at least one
     * @param northDeg north, clockwise from the model's +Y, seen from above
     * @return what to tell if the two suns stand more than 2 degrees apart and a tip would fall more than 1 mm off
     * @throws Refusal if a sample cannot be a shadow on level ground
     */
    public static Optional<String> of(SunDirection stated, List<SunSample> samples, View view, double northDeg)
            throws Refusal {
        SunDirection drawn = SunFit.of(samples, view).direction();
        double apart = stated.degreesTo(drawn);
        List<Double> off = SunFit.residuals(samples, VanishingPoints.of(view, stated));
        int worst = worst(off);
        if (!(apart > MOST_DEGREES && off.get(worst) > MOST_MM)) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                Locale.ROOT,
                "the stated sun, %s, and the shadows on the drawing, which tell of a sun at %s, are %.1f degrees apart: %s has"
                        + " its tip %s; check the stated sun and its north, and that upright and tip stand on one level floor",
                stated.told(northDeg),
                drawn.told(northDeg),
                apart,
                samples.get(worst).told(),
                beside(off.get(worst), "the stated sun casts it")));
    }

    /**
     * Compares samples with one another.
     *
     * @param samples the samples that a sun was fitted to
     * @param fitted that sun
     * @return what to tell if a tip lies more than 1 mm from where the sun of all of them casts it
     */
    public static Optional<String> among(List<SunSample> samples, FittedSun fitted) {
        int worst = worst(fitted.residualsMm());
        double off = fitted.residualsMm().get(worst);
        if (!(off > MOST_MM)) {
            return Optional.empty();
        }
        return Optional.of("the " + samples.size() + " shadow samples do not tell of one sun: "
                + samples.get(worst).told() + " has its tip " + beside(off, "the sun of them all casts it")
                + "; check that its upright and tip stand on one level floor");
    }

    private static String beside(double mm, String where) {
        return Double.isFinite(mm)
                ? String.format(Locale.ROOT, "%.1f mm from where %s", mm, where)
                : "before the viewer, and " + where + " behind";
    }

    private static int worst(List<Double> off) {
        int worst = 0;
        for (int k = 1; k < off.size(); k++) {
            if (off.get(k) > off.get(worst)) {
                worst = k;
            }
        }
        return worst;
    }
}
