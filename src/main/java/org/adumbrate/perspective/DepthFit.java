package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.adumbrate.fault.Refusal;

/**
 * From height lines to the range of a depth pass whose near and far are not stated. At the foot of a line the distance is
 * focal · height / drawn height, and level = (distance - near) / (far - near).
 */
public final class DepthFit {
    private static final int MOST_READINGS = 200;
    private static final int ROUNDS = 12;

    /** Ends of lines are drawn no better than this, in mm. */
    private static final double LEAST_SIGMA_MM = 0.05;

    /** Tukey's constant: beyond so many standard deviations a reading has no weight. */
    private static final double TUKEY = 4.685;

    private static final double TO_DEVIATION = 1.4826;

    /** Levels nearer to each other than this are one level. */
    private static final double ONE_LEVEL = 1e-4;

    /** Drawn heights that differ from the fitted ones by more than this share, in the middle, are not explained. */
    private static final double MOST_OFF = 0.05;

    private final List<DepthReading> readings;
    private final double scale;

    /** A distance at level 0 and how much it grows to level 1. */
    private record Range(double near, double growth) {
        double at(double level) {
            return near + growth * level;
        }
    }

    private DepthFit(List<DepthReading> readings, double scale) {
        this.readings = readings;
        this.scale = scale;
    }

    /**
     * Fits near and far: first the median of the slopes between all pairs (Theil and Sen), then by weighted least squares in
     * mm of drawn height with Tukey's weights.
     *
     * @param readings levels from 0 to 1 at the feet of height lines; of two different levels at least
     * @param focalMm the focal length at sheet scale, above zero
     * @param heightM how tall each of the lines is, in metres, above zero
     * @throws Refusal if the readings do not settle it, or distances do not grow evenly with the levels
     */
    public static FittedDepth of(List<DepthReading> readings, double focalMm, double heightM) throws Refusal {
        if (!(focalMm > 0 && heightM > 0)) {
            throw new IllegalArgumentException("focal length and height must be above zero");
        }
        return new DepthFit(readings, focalMm * heightM).fit();
    }

    private FittedDepth fit() throws Refusal {
        Range range = start();
        double sigma = sigma(range);
        for (int round = 0; round < ROUNDS; round++) {
            range = weighted(range, sigma);
            sigma = sigma(range);
        }
        check(range);
        List<Double> residuals = new ArrayList<>();
        List<DepthReading> distrusted = new ArrayList<>();
        for (DepthReading reading : readings) {
            double residual = residual(reading, range);
            residuals.add(residual);
            if (Math.abs(residual) > TUKEY * sigma) {
                distrusted.add(reading);
            }
        }
        double near = Math.max(0, range.near());
        return new FittedDepth(near, range.at(1), residuals, distrusted);
    }

    private Range start() throws Refusal {
        List<DepthReading> some = thinned();
        List<Double> slopes = new ArrayList<>();
        for (int i = 0; i < some.size(); i++) {
            for (int j = i + 1; j < some.size(); j++) {
                double levels = some.get(j).depth() - some.get(i).depth();
                if (Math.abs(levels) > ONE_LEVEL) {
                    slopes.add((distance(some.get(j)) - distance(some.get(i))) / levels);
                }
            }
        }
        if (slopes.isEmpty()) {
            throw new Refusal(
                    "the depth pass is not scaled by " + readings.size() + " height lines: two at least must stand on"
                            + " it at different distances; or give passes.depth.near and far");
        }
        double slope =
                FocalFit.median(slopes.stream().mapToDouble(Double::doubleValue).toArray());
        if (!(slope > 0)) {
            throw new Refusal(
                    "the depth pass gets darker with distance, or does not belong to the height lines; export it with"
                            + " near surfaces dark and far ones light");
        }
        double near = FocalFit.median(some.stream()
                .mapToDouble(reading -> distance(reading) - slope * reading.depth())
                .toArray());
        return new Range(near, slope);
    }

    private List<DepthReading> thinned() {
        List<DepthReading> some = new ArrayList<>();
        int step = 1 + readings.size() / MOST_READINGS;
        for (int k = 0; k < readings.size(); k += step) {
            some.add(readings.get(k));
        }
        return some;
    }

    /** Least squares of mm: a distance that is off by a little makes the drawn height off by scale / distance² as much. */
    private Range weighted(Range range, double sigma) {
        double w = 0;
        double wl = 0;
        double wll = 0;
        double wd = 0;
        double wld = 0;
        for (DepthReading reading : readings) {
            double off = residual(reading, range) / (TUKEY * sigma);
            if (Math.abs(off) < 1) {
                double bend = distance(reading) * range.at(reading.depth());
                double weight = Math.pow(1 - off * off, 2) * Math.pow(scale / bend, 2);
                w += weight;
                wl += weight * reading.depth();
                wll += weight * reading.depth() * reading.depth();
                wd += weight * distance(reading);
                wld += weight * reading.depth() * distance(reading);
            }
        }
        double determinant = w * wll - wl * wl;
        if (!(determinant > 1e-12 * w * wll)) {
            return range;
        }
        return new Range((wd * wll - wld * wl) / determinant, (w * wld - wl * wd) / determinant);
    }

    private double sigma(Range range) {
        double median = FocalFit.median(readings.stream()
                .mapToDouble(reading -> Math.abs(residual(reading, range)))
                .toArray());
        return Math.max(LEAST_SIGMA_MM, TO_DEVIATION * median);
    }

    private void check(Range range) throws Refusal {
        double off = FocalFit.median(readings.stream()
                .mapToDouble(reading ->
                        Math.abs(residual(reading, range)) / reading.line().heightMm())
                .toArray());
        if (!(off <= MOST_OFF)) {
            throw new Refusal(String.format(
                    Locale.ROOT,
                    "the levels of the depth pass do not grow evenly with distance: the drawn heights of the lines differ from"
                            + " it by %.0f %%; export depth as distance along the view, without a curve, or give"
                            + " passes.depth.near and far",
                    100 * off));
        }
        double nearest = readings.stream().mapToDouble(this::distance).min().orElse(0);
        if (range.near() < -MOST_OFF * nearest) {
            throw new Refusal(
                    "level 0 of the depth pass would lie behind the viewer, so its levels do not grow evenly with"
                            + " distance; export depth as distance along the view, without a curve, or give passes.depth.near and far");
        }
    }

    private double distance(DepthReading reading) {
        return scale / reading.line().heightMm();
    }

    /** Drawn height less what the level says; without bound where the level lies behind the viewer. */
    private double residual(DepthReading reading, Range range) {
        double distance = range.at(reading.depth());
        return distance > 0 ? reading.line().heightMm() - scale / distance : Double.POSITIVE_INFINITY;
    }
}
