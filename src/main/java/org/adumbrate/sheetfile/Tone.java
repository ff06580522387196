package org.adumbrate.sheetfile;

import java.util.List;

/**
 * A tone curve.
 *
 * @param points at least two, their light in ascending
 */
@Written(asList = true, shared = true)
public record Tone(
        @Key(value = "Points [light in %, light out %], ascending.", atLeast = 2)
        List<TonePoint> points) {
    /** @throws IllegalArgumentException if the light in does not ascend */
    public Tone {
        points = List.copyOf(points);
        for (int k = 1; k < points.size(); k++) {
            if (points.get(k).in().percent() <= points.get(k - 1).in().percent()) {
                throw new IllegalArgumentException("the light in, the first of each pair, must ascend");
            }
        }
    }
}
