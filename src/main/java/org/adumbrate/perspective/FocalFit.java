package org.adumbrate.perspective;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.adumbrate.fault.Refusal;

/** From a depth pass in metres and height lines to the focal length: depth times drawn height by true height, at each foot. */
public final class FocalFit {
    /** Height lines that differ by more than this share, in the middle, do not belong to the depth pass. */
    private static final double MOST_SPREAD = 0.05;

    /** From the median of absolute deviations to a standard deviation, and to the standard error of a median. */
    private static final double TO_DEVIATION = 1.4826;

    private static final double TO_MEDIAN_ERROR = 1.2533;

    private FocalFit() {}

    /**
     * The median over all height lines, which up to half of them may have wrong.
     *
     * @param readings depths in metres at the feet of height lines
     * @param heightM how tall each of the lines is, in metres, above zero
     * @throws Refusal if no foot has a depth above zero, or the depths do not go with the lines
     */
    public static FittedFocal of(List<DepthReading> readings, double heightM) throws Refusal {
        double[] focals = readings.stream()
                .filter(reading -> reading.depth() > 0)
                .mapToDouble(reading -> reading.depth() * reading.line().heightMm() / heightM)
                .toArray();
        if (focals.length == 0) {
            throw new Refusal(
                    "no height line stands on a surface of the depth pass, so it does not tell the focal length");
        }
        double focal = median(focals);
        double spread = TO_DEVIATION
                * median(Arrays.stream(focals).map(one -> Math.abs(one - focal)).toArray());
        if (spread > MOST_SPREAD * focal) {
            throw new Refusal(String.format(
                    Locale.ROOT,
                    "the depth pass does not go with the height lines: they tell of focal lengths that differ by %.0f %%; is it"
                            + " of this view, are its near and far right, and is the height of the lines?",
                    100 * spread / focal));
        }
        return new FittedFocal(focal, TO_MEDIAN_ERROR * spread / Math.sqrt(focals.length));
    }

    /** The middle of some numbers. */
    static double median(double[] numbers) {
        double[] sorted = numbers.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
