package org.adumbrate.perspective;

import java.util.List;

/**
 * A floor as its height lines tell it.
 *
 * @param name the stated name, or {@code floor-1}, {@code floor-2} ... from the lowest up
 * @param eyeHeightM how high the eye is above it, in metres; negative for a floor above the eye
 * @param eyeHeightErrorM the standard error of that; 0 where it was stated
 * @param lines the lines that stand on it; none on a floor that is known from its stated elevation alone
 * @param rmsMm how far the ends of these lines lie from where the fit puts them, in mm, both ends of a line together as
 *     one distance, root mean square
 * @param outliers lines that fit no floor, and this one least badly
 */
public record FittedFloor(
        String name,
        double eyeHeightM,
        double eyeHeightErrorM,
        List<HeightLine> lines,
        double rmsMm,
        List<HeightLine> outliers) {
    /** The eye is said to be level with a floor if its height above it is less than this many standard errors. */
    private static final double SURE = 4;

    /** Copies the lists. */
    public FittedFloor {
        lines = List.copyOf(lines);
        outliers = List.copyOf(outliers);
    }

    /** True if the floor cannot be told from one at the height of the eye, so that a foot on it says nothing of size. */
    public boolean isEdgeOn() {
        return Math.abs(eyeHeightM) <= Math.max(1e-3, SURE * eyeHeightErrorM);
    }

    /** True if a point of the sheet may show this floor: it lies on the floor's side of the horizon. */
    boolean isSeenAt(double yMm, double horizonMm) {
        return !isEdgeOn() && (yMm - horizonMm) * eyeHeightM > 0;
    }
}
