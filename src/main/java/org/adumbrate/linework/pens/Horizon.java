package org.adumbrate.linework.pens;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The horizon of uprights of one height that stand on a few floors. In perspective with upright verticals, on each floor
 * image height / (foot - horizon) = height / eye height: so under the right horizon these ratios take few values.
 */
final class Horizon {
    private static final int FEWEST = 4;
    private static final int MOST = 200;

    /** Ratios that differ by less than this share are the same. */
    private static final double SAME = 0.02;

    /** The share of uprights whose ratio must be that of another. */
    private static final double AGREE = 0.6;

    /** How wide gaps within an upright may be: none, those of exporters, those behind rails. */
    private static final List<Double> GAPS_MM = List.of(0.0, 2.0, 25.0);

    private Horizon() {}

    /**
     * The y of the horizon that most pairs of uprights can share, if it explains enough of them: as they are, or broken by
     * exporters, or hidden in the middle.
     */
    static OptionalDouble of(List<Upright> uprights) {
        return GAPS_MM.stream()
                .map(gap -> ofWhole(gap == 0 ? uprights : Upright.joined(uprights, gap)))
                .filter(OptionalDouble::isPresent)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble ofWhole(List<Upright> uprights) {
        int count = uprights.size();
        if (count < FEWEST || count > MOST) {
            return OptionalDouble.empty();
        }
        double best = 0;
        int most = 0;
        for (int a = 0; a < count; a++) {
            for (int b = a + 1; b < Math.min(count, a + 30); b++) {
                double slope = uprights.get(b).height() - uprights.get(a).height();
                double horizon = uprights.get(a).footY()
                        - uprights.get(a).height()
                                * (uprights.get(b).footY() - uprights.get(a).footY())
                                / slope;
                int agreeing = Math.abs(slope) > 0.5 && Double.isFinite(horizon) ? agreeing(uprights, horizon) : 0;
                if (agreeing > most) {
                    most = agreeing;
                    best = horizon;
                }
            }
        }
        return most >= Math.max(FEWEST, AGREE * count) ? OptionalDouble.of(best) : OptionalDouble.empty();
    }

    /** How many uprights have the ratio of at least two others. */
    private static int agreeing(List<Upright> uprights, double horizon) {
        double[] ratios = uprights.stream()
                .mapToDouble(upright -> upright.height() / (upright.footY() - horizon))
                .filter(ratio -> ratio != 0 && Double.isFinite(ratio))
                .sorted()
                .toArray();
        return (int) Arrays.stream(ratios)
                .filter(ratio -> Arrays.stream(ratios)
                                .filter(other -> Math.abs(other - ratio) <= SAME * Math.abs(ratio))
                                .count()
                        >= 3)
                .count();
    }
}
