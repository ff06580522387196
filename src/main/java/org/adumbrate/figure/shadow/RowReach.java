package org.adumbrate.figure.shadow;

/**
 * What a figure's shadow may touch of a row of pixels.
 *
 * @param caster the figure
 * @param from the leftmost place, in pixels
 * @param to the rightmost place, in pixels
 */
record RowReach(Caster caster, double from, double to) {
    /** Whether it may touch a pixel from a first one to the one before an end. */
    boolean touches(int first, int end) {
        return from < end && to >= first;
    }
}
