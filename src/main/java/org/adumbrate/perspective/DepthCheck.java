package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.fault.Refusal;

/** Holds the stated range of a depth pass against height lines and a known focal length. */
public final class DepthCheck {
    /** Distances may differ by this share, in the middle: feet stand beside edges, and people's heights are rounded. */
    private static final double OFF = 0.05;

    /** Fewer lines than this say nothing against a stated range. */
    private static final int FEWEST = 2;

    private DepthCheck() {}

    /**
     * Whether the pass shows height lines as far off as they are drawn tall.
     *
     * @param metres depths in metres at the feet of height lines, by the stated range
     * @param levels the same as levels between 0 and 1
     * @param focalMm the focal length at sheet scale, above zero
     * @param heightM how tall each of the lines is, in metres, above zero
     */
    public static Optional<Contradiction> of(
            List<DepthReading> metres, List<DepthReading> levels, double focalMm, double heightM) {
        if (metres.size() < FEWEST) {
            return Optional.empty();
        }
        List<DepthReading> byRatio = new ArrayList<>(metres);
        byRatio.sort(Comparator.comparingDouble(reading -> ratio(reading, focalMm, heightM)));
        DepthReading middle = byRatio.get(byRatio.size() / 2);
        double off = FocalFit.median(metres.stream()
                .mapToDouble(reading -> Math.abs(ratio(reading, focalMm, heightM) - 1))
                .toArray());
        if (off <= OFF) {
            return Optional.empty();
        }
        HeightLine line = middle.line();
        return Optional.of(new Contradiction(
                "passes.depth",
                String.format(
                        Locale.ROOT,
                        "passes.depth puts the height line at (%.1f, %.1f) %.2f m away, but its %.1f mm make it %.2f m at a"
                                + " focal length of %.1f mm, and so for most lines; %s, or put camera.focal or heights.height"
                                + " right",
                        line.foot().x(),
                        line.foot().y(),
                        middle.depth(),
                        line.heightMm(),
                        distance(line, focalMm, heightM),
                        focalMm,
                        advice(levels, focalMm, heightM)),
                metres.stream().map(reading -> reading.line().foot()).toList(),
                metres.size() > FEWEST));
    }

    private static String advice(List<DepthReading> levels, double focalMm, double heightM) {
        try {
            FittedDepth fitted = DepthFit.of(levels, focalMm, heightM);
            return String.format(
                    Locale.ROOT,
                    "by the lines it reaches from near %.2f m to far %.2f m",
                    fitted.nearM(),
                    fitted.farM());
        } catch (Refusal reason) {
            return "put near and far right";
        }
    }

    private static double ratio(DepthReading reading, double focalMm, double heightM) {
        return reading.depth() / distance(reading.line(), focalMm, heightM);
    }

    private static double distance(HeightLine line, double focalMm, double heightM) {
        return focalMm * heightM / line.heightMm();
    }
}
