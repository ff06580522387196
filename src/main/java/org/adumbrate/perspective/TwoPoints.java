package org.adumbrate.perspective;

import java.util.Optional;

/**
 * What two vanishing points of level edges at a right angle tell of a view: with the principal point between them at distances
 * a and b, focal² = a b (Caprile and Torre, "Using vanishing points for camera calibration", IJCV 4(2), 1990). It rests on the
 * right angle and on the principal point's x.
 *
 * @param focalMm the focal length at sheet scale
 * @param turn of the viewing direction in radians, clockwise from the nearer of the two directions, seen from above
 */
public record TwoPoints(double focalMm, double turn) {
    /**
     * From two points on the horizon.
     *
     * @param principalX the x of the principal point
     * @return nothing if the principal point does not lie between them
     */
    public static Optional<TwoPoints> of(double principalX, VanishingPoint one, VanishingPoint other) {
        double a = one.at().x() - principalX;
        double b = other.at().x() - principalX;
        if (!(a * b < 0)) {
            return Optional.empty();
        }
        double focal = Math.sqrt(-a * b);
        double nearer = Math.abs(a) < Math.abs(b) ? a : b;
        return Optional.of(new TwoPoints(focal, -Math.atan2(nearer, focal)));
    }
}
