package org.adumbrate.geometry;

import java.util.List;

/**
 * A dash pattern along a line.
 *
 * @param lengthsMm lengths of dash, gap, dash, gap ... in mm; empty for an unbroken line
 * @param phaseMm how far into the pattern the line begins, in mm
 */
public record Dash(List<Double> lengthsMm, double phaseMm) {
    /** An unbroken line. */
    public static final Dash NONE = new Dash(List.of(), 0);

    /** @throws IllegalArgumentException if a length is negative, or if all are zero */
    public Dash {
        lengthsMm = List.copyOf(lengthsMm);
        double sum = 0;
        for (double length : lengthsMm) {
            Space.require(length >= 0 && Double.isFinite(length), () -> "a dash must not be negative");
            sum += length;
        }
        boolean draws = lengthsMm.isEmpty() || sum > 0;
        Space.require(draws, () -> "a dash pattern needs a length above zero");
    }

    /** True for an unbroken line. */
    public boolean isNone() {
        return lengthsMm.isEmpty();
    }

    /** The pattern at another scale. */
    public Dash scaled(double factor) {
        return new Dash(lengthsMm.stream().map(length -> length * factor).toList(), phaseMm * factor);
    }
}
