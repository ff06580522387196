package org.adumbrate.perspective;

/**
 * What a depth pass shows where a height line stands.
 *
 * @param line the height line
 * @param depth what is read at its foot: metres from the eye along the viewing direction where the pass's range is known,
 *     else the level between 0 and 1
 */
public record DepthReading(HeightLine line, double depth) {
    /** @throws IllegalArgumentException if the depth is not finite */
    public DepthReading {
        if (!Double.isFinite(depth)) {
            throw new IllegalArgumentException("a depth must be finite");
        }
    }
}
