package org.adumbrate.figure.shadow;

import org.adumbrate.geometry.ModelPoint;

/**
 * A figure's solid where it stands.
 *
 * @param foot where it stands on its floor
 * @param turn about the vertical through the foot in radians, anticlockwise seen from above: the outline's x axis points to
 *     (cos turn, sin turn) of the model
 * @param mirrored whether the outline is mirrored about the foot's vertical, before it is turned
 * @param solid what stands there
 */
public record StandingSolid(ModelPoint foot, double turn, boolean mirrored, SliceSolid solid) {
    /** @throws IllegalArgumentException if a number is not finite */
    public StandingSolid {
        if (!Double.isFinite(foot.x() + foot.y() + foot.z() + turn)) {
            throw new IllegalArgumentException("a figure must stand at finite numbers");
        }
    }
}
