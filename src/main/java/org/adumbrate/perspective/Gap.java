package org.adumbrate.perspective;

/**
 * What a gap between two pieces of an upright says of whether they are one line. Exporters leave gaps of a millimetre, rails
 * and posts hide more; the next line that stands at the same place across the sheet may be anywhere. So the odds are the
 * ratio of two densities: gaps within lines fall off exponentially, half of them with a mean of 1 mm and half with one of 15 mm,
 * and gaps between lines spread evenly over 50 mm. Lines that stand one above the other are rarer than broken ones.
 */
final class Gap {
    /** Pieces lie on one line to this many mm across. */
    static final double ACROSS_MM = 0.15;

    /** Pieces that overlap by this many mm at most may still be one line. */
    static final double OVERLAP_MM = 0.3;

    private static final double BROKEN_MM = 1;
    private static final double HIDDEN_MM = 15;
    private static final double BETWEEN_LINES_MM = 50;
    private static final double BROKEN_RATHER = 3;

    private Gap() {}

    /** What it costs to take the pieces on both sides for one line, as a logarithm. */
    static double joining(double mm) {
        return Math.log1p(1 / odds(mm));
    }

    /** What it costs to take them for two. */
    static double parting(double mm) {
        return Math.log1p(odds(mm));
    }

    /** True if the pieces on both sides are rather one line than two. */
    static boolean isWithinALine(double mm) {
        return odds(mm) > 1;
    }

    private static double odds(double mm) {
        double gap = Math.max(0, mm);
        double within = Math.exp(-gap / BROKEN_MM) / BROKEN_MM / 2 + Math.exp(-gap / HIDDEN_MM) / HIDDEN_MM / 2;
        return BROKEN_RATHER * within * BETWEEN_LINES_MM;
    }
}
