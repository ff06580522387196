package org.adumbrate.linework.cleanup;

/**
 * How far a clean-up may go. Every length is one on the sheet, in mm, and 0 switches its step off.
 *
 * @param duplicatesMm lines that run beside each other no farther apart than this are drawn once
 * @param joinMm ends no farther apart than this are joined: pieces of one straight line into one piece, corners into corners
 * @param shortestMm what is shorter than this and touches nothing is left out
 * @param clutterMm where three or more lines run closer than this, inner ones are left out
 */
public record CleanUpSettings(double duplicatesMm, double joinMm, double shortestMm, double clutterMm) {
    /** What a print at 300 dots per inch, one every 0.085 mm, can show. */
    public static final CleanUpSettings STANDARD = new CleanUpSettings(0.05, 0.1, 0.2, 0.1);

    /** Everything off. */
    public static final CleanUpSettings OFF = new CleanUpSettings(0, 0, 0, 0);

    private static final double MOST_MM = 10;

    /** @throws IllegalArgumentException if a length is not a number from 0 to 10 mm */
    public CleanUpSettings {
        require("duplicates", duplicatesMm);
        require("join", joinMm);
        require("shortest", shortestMm);
        require("clutter", clutterMm);
    }

    private static void require(String name, double lengthMm) {
        if (!(lengthMm >= 0 && lengthMm <= MOST_MM)) {
            throw new IllegalArgumentException(name + " must be 0 to " + MOST_MM + " mm, not " + lengthMm);
        }
    }
}
