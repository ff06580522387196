package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A horizon that height lines need not settle.
 *
 * @param mm sheet y
 * @param errorMm its standard error; 0 where it is stated
 * @param cost how unlikely it is before height lines are looked at, as a logarithm; 0 where it is stated
 */
record KnownHorizon(double mm, double errorMm, double cost) {
    /** Points that lie at one height to so many standard errors lie on one horizon. */
    private static final double SURE = 3;

    /** Height lines put the horizon about so well by themselves, in mm: a worse one is of no use to them. */
    private static final double WORST_MM = 1.5;

    /** Points that do not belong together lie at one height so many times less often than points on the horizon. */
    private static final double SAME_HEIGHT_RATHER = 20;

    /** Lines are drawn no more exactly than this, in mm, whatever their number. */
    private static final double LEAST_ERROR_MM = 0.02;

    /** Where lines meet in one point, that it is none of the horizon's is so many times less likely than that it is. */
    private static final double NONE_LEVEL = 0.05;

    static KnownHorizon stated(double mm) {
        return new KnownHorizon(mm, 0, 0);
    }

    /** What it costs to take none of the points where lines of a drawing meet for one on the horizon, as a logarithm. */
    static double costOfNone(List<KnownHorizon> horizons) {
        double some =
                horizons.stream().mapToDouble(one -> Math.exp(-one.cost())).sum();
        return horizons.isEmpty() ? 0 : -Math.log(1 - some);
    }

    /**
     * What may be the horizon, as points where lines of the drawing meet have it: each of them is as likely, and two that lie
     * at one height are so by no accident.
     */
    static List<KnownHorizon> of(List<VanishingPoint> points) {
        List<VanishingPoint> sure = points.stream()
                .filter(point -> point.yErrorMm() <= WORST_MM)
                .sorted(Comparator.comparingDouble(VanishingPoint::yErrorMm))
                .toList();
        List<List<VanishingPoint>> levels = new ArrayList<>();
        for (VanishingPoint point : sure) {
            levels.stream()
                    .filter(level -> isAtOneHeight(level.get(0), point))
                    .findFirst()
                    .ifPresentOrElse(level -> level.add(point), () -> levels.add(new ArrayList<>(List.of(point))));
        }
        double all = levels.stream().mapToDouble(KnownHorizon::share).sum() + NONE_LEVEL;
        return levels.stream()
                .map(level -> new KnownHorizon(
                        level.get(0).at().y(),
                        Math.max(LEAST_ERROR_MM, level.get(0).yErrorMm()),
                        -Math.log(share(level) / all)))
                .toList();
    }

    private static double share(List<VanishingPoint> level) {
        return Math.pow(SAME_HEIGHT_RATHER, level.size() - 1);
    }

    private static boolean isAtOneHeight(VanishingPoint one, VanishingPoint other) {
        return Math.abs(one.at().y() - other.at().y()) <= SURE * Math.hypot(one.yErrorMm(), other.yErrorMm());
    }
}
