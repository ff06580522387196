package org.adumbrate.raster.trace;

/**
 * How pixels become lines.
 *
 * @param tolerancePx how far the steps between pixels may stray from one straight line, in pixels; at 1 the steps of a straight
 *     edge, which stray by half a pixel either way, never break it
 * @param leastAreaPx pieces and holes of less than this many square pixels are left out
 */
public record Smoothing(double tolerancePx, double leastAreaPx) {
    /** Straight edges stay whole, and specks of less than four pixels are left out. */
    public static final Smoothing USUAL = new Smoothing(1, 4);

    /** @throws IllegalArgumentException if the tolerance is not from 0.1 to 100 or the area is below zero */
    public Smoothing {
        if (!(tolerancePx >= 0.1 && tolerancePx <= 100 && leastAreaPx >= 0)) {
            throw new IllegalArgumentException(
                    "cannot smooth to " + tolerancePx + " px and " + leastAreaPx + " square pixels");
        }
    }
}
