package org.adumbrate.perspective;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;

/** Whether a sun that is stated and the shadows on the drawing tell of one and the same sun. */
public final class SunCheck {
    private static final double MOST_DEGREES = 2;
    private static final double MOST_MM = 1;

    private SunCheck() {}

    /**
     * Compares a stated sun with samples.
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
        VanishingPoints points = VanishingPoints.of(view, stated);
        SunSample worst = samples.get(0);
        double most = 0;
        for (SunSample sample : samples) {
            double off = off(sample, points);
            if (off > most) {
                worst = sample;
                most = off;
            }
        }
        if (!(apart > MOST_DEGREES && most > MOST_MM)) {
            return Optional.empty();
        }
        String falls = Double.isFinite(most)
                ? String.format(Locale.ROOT, "%.1f mm beside its place", most)
                : "behind the viewer";
        return Optional.of(String.format(
                Locale.ROOT,
                "the stated sun, %s, and the shadows on the drawing, which tell of a sun at %s, are %.1f degrees apart: the"
                        + " shadow's tip at %s would fall %s; check north, time and the sample, whose upright and tip must"
                        + " stand on one level floor",
                stated.told(northDeg),
                drawn.told(northDeg),
                apart,
                told(worst.tip()),
                falls));
    }

    private static double off(SunSample sample, VanishingPoints points) {
        return points.shadowTip(sample.foot(), sample.head())
                .map(tip -> tip.distanceTo(sample.tip()))
                .orElse(Double.POSITIVE_INFINITY);
    }

    static String told(SheetPoint point) {
        return String.format(Locale.ROOT, "(%.1f, %.1f)", point.x(), point.y());
    }
}
