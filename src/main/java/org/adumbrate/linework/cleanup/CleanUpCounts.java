package org.adumbrate.linework.cleanup;

/**
 * What a clean-up did.
 *
 * @param merged pieces that were drawn before, wholly or in part, and are drawn once now
 * @param joined pieces that went on a straight line which another had begun
 * @param dropped lines that were too short to show and touched nothing
 * @param thinned stretches of lines taken out where lines ran too close
 */
public record CleanUpCounts(int merged, int joined, int dropped, int thinned) {
    /** Nothing done. */
    public static final CleanUpCounts NONE = new CleanUpCounts(0, 0, 0, 0);

    /** Both together. */
    public CleanUpCounts plus(CleanUpCounts other) {
        return new CleanUpCounts(
                merged + other.merged, joined + other.joined, dropped + other.dropped, thinned + other.thinned);
    }
}
