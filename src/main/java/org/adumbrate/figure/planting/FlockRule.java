package org.adumbrate.figure.planting;

/**
 * How a flock flies.
 *
 * @param count how many birds there are, at least one
 * @param wingspanM how wide they are in metres, above zero
 * @param nearestM the least distance from the eye in metres, above zero
 * @param farthestM the greatest distance from the eye in metres
 * @param seed another number gives another flock
 */
public record FlockRule(int count, double wingspanM, double nearestM, double farthestM, long seed) {
    /** @throws IllegalArgumentException if a number is out of range */
    public FlockRule {
        if (!(count > 0 && wingspanM > 0 && nearestM > 0 && farthestM >= nearestM && Double.isFinite(farthestM))) {
            throw new IllegalArgumentException("no flock of %d birds %s m wide flies at %s to %s m"
                    .formatted(count, wingspanM, nearestM, farthestM));
        }
    }
}
