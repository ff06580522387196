package org.adumbrate.registration;

import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.GreyImage;

/**
 * A pass to be placed: its light, perhaps at a whole fraction of its resolution, and its size in the file.
 *
 * @param grey linear light; each pixel is the mean of {@code reduction x reduction} pixels of the file (fewer along the
 *     right and bottom edges, or a last incomplete block left out)
 * @param original the size in the file, in pixels; placements are given in these
 */
public record PassImage(GreyImage grey, PixelSize original) {
    /** @throws IllegalArgumentException if the light is not a whole-number reduction of the original */
    public PassImage {
        int times = reduction(grey, original);
        if (Math.abs((long) grey.size().width() * times - original.width()) >= times
                || Math.abs((long) grey.size().height() * times - original.height()) >= times) {
            throw new IllegalArgumentException(grey.size() + " is no whole-number reduction of " + original);
        }
    }

    /** A pass at its full resolution. */
    public static PassImage full(GreyImage grey) {
        return new PassImage(grey, grey.size());
    }

    /** How many pixels of the file one pixel of {@code grey} spans, each way. */
    public int reduction() {
        return reduction(grey, original);
    }

    private static int reduction(GreyImage grey, PixelSize original) {
        return (int)
                Math.max(1, Math.round((double) original.width() / grey.size().width()));
    }
}
