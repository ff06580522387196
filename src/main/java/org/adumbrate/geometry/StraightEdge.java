package org.adumbrate.geometry;

/**
 * A straight edge that was found on the sheet.
 *
 * @param from one end
 * @param to the other end
 * @param errorMm how far each end may lie beside the true line, as a standard deviation in mm; above zero
 */
public record StraightEdge(SheetPoint from, SheetPoint to, double errorMm) {
    /** @throws IllegalArgumentException if the ends coincide or the error is not above zero */
    public StraightEdge {
        Space.require(
                errorMm > 0 && from.distanceTo(to) > 0,
                () -> "an edge needs two ends and an error above zero, not " + from + ", " + to + ", " + errorMm);
    }

    /** How long it is, in mm. */
    public double lengthMm() {
        return from.distanceTo(to);
    }
}
