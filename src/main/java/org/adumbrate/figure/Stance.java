package org.adumbrate.figure;

/**
 * How something stands on its spot.
 *
 * @param statureM its height in metres, above zero
 * @param turn about the vertical through its foot in radians, anticlockwise seen from above: the outline's x axis points to
 *     (cos turn, sin turn) of the model's X and Y
 * @param mirrored whether left and right of the outline change places, before it is turned
 */
public record Stance(double statureM, double turn, boolean mirrored) {
    /** @throws IllegalArgumentException if the stature is not above zero or the turn is not finite */
    public Stance {
        if (!(statureM > 0 && Double.isFinite(statureM) && Double.isFinite(turn))) {
            throw new IllegalArgumentException("a stature must be above zero, and a turn finite");
        }
    }

    /** Facing the picture as it was drawn. */
    public static Stance upright(double statureM) {
        return new Stance(statureM, 0, false);
    }
}
