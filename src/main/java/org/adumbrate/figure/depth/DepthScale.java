package org.adumbrate.figure.depth;

/**
 * What the values of a depth pass stand for: depth along the viewing direction, changing evenly from near at 0 to far at 1.
 * A value of 1 or more, or one that is no number, is the background, where nothing is seen.
 *
 * @param near metres at value 0
 * @param far metres at value 1, more than near
 */
public record DepthScale(double near, double far) {
    /** @throws IllegalArgumentException unless 0 ≤ near &lt; far */
    public DepthScale {
        if (!(near >= 0 && far > near && Double.isFinite(far))) {
            throw new IllegalArgumentException(
                    "a depth pass must reach from near to farther, not from %s m to %s m".formatted(near, far));
        }
    }

    /** The inverse of the depth of a value, in 1/m; 0 for the background. */
    double inverse(float value) {
        double depth = near + value * (far - near);
        return value < 1 && depth > 0 ? 1 / depth : 0;
    }
}
