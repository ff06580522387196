package org.adumbrate.figure.planting;

import java.util.OptionalDouble;

/**
 * How plants are scattered.
 *
 * @param spacingM the least distance from plant to plant on the floor in metres, above zero
 * @param heightM how tall they are on average in metres; the outlines' own nominal heights where it is not told
 * @param variation how far a height may differ from that either way, as a share: 0 to 1, without 1
 * @param seed another number gives another scatter
 */
public record PlantingRule(double spacingM, OptionalDouble heightM, double variation, long seed) {
    /** @throws IllegalArgumentException if a number is out of range */
    public PlantingRule {
        if (!(spacingM > 0 && Double.isFinite(spacingM) && variation >= 0 && variation < 1)) {
            throw new IllegalArgumentException(
                    "cannot plant with a spacing of " + spacingM + " m and a variation of " + variation);
        }
    }
}
