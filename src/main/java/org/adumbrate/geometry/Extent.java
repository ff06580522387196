package org.adumbrate.geometry;

/**
 * How far something reaches in its plane.
 *
 * @param left the least x
 * @param top the least y
 * @param right the greatest x
 * @param bottom the greatest y
 */
public record Extent(double left, double top, double right, double bottom) {
    /** @throws IllegalArgumentException if it is turned inside out or not finite */
    public Extent {
        Space.require(
                left <= right
                        && top <= bottom
                        && Double.isFinite(left)
                        && Double.isFinite(top)
                        && Double.isFinite(right)
                        && Double.isFinite(bottom),
                () -> "an extent must go from left to right and from top to bottom");
    }

    /** The same with a margin all around. */
    public Extent grown(double margin) {
        return new Extent(left - margin, top - margin, right + margin, bottom + margin);
    }

    /** What holds this and another. */
    public Extent with(Extent other) {
        return new Extent(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    /** How wide it is. */
    public double width() {
        return right - left;
    }

    /** How high it is. */
    public double height() {
        return bottom - top;
    }
}
