package org.adumbrate.linework.outline;

/** How wide filled lines are, and what counts as the same width. */
final class Widths {
    /** The widest line of ISO 128-2, in mm. */
    static final double WIDEST_MM = 2;

    /** Thinner shapes are not printed by anything, in mm. */
    static final double THINNEST_MM = 0.004;

    /** How much the width of a line may differ along it, as a share of it. */
    private static final double SAME_SHARE = 0.03;

    /** And in any case, in mm: coordinates in files are rounded to a hundredth of a point, some to less. */
    private static final double SAME_MM = 0.012;

    private Widths() {}

    /** Whether a width is that of a line. */
    static boolean isLine(double widthMm) {
        return widthMm >= THINNEST_MM && widthMm <= WIDEST_MM * (1 + SAME_SHARE);
    }

    /** By how much a width may differ from one that is meant to be the same; never by half. */
    static double tolerance(double widthMm) {
        return Math.min(Math.max(SAME_SHARE * widthMm, SAME_MM), widthMm / 3);
    }
}
