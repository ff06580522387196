package org.adumbrate.figure.depth;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.raster.StoredNumbers;

/**
 * A depth pass in memory, sampled at pixel centres: the inverse of the depth of each pixel, because over a plane that changes
 * evenly from pixel to pixel.
 */
public final class DepthMap {
    private final PixelSize size;
    private final float[] numbers;
    private final DepthScale scale;
    private final double step;
    private final Affine<SheetPoint, RasterPoint> toPixels;
    private final double nearest;
    private final double farthest;

    private DepthMap(StoredNumbers stored, DepthScale scale, Affine<SheetPoint, RasterPoint> toPixels) {
        this.size = stored.size();
        this.numbers = stored.values();
        this.scale = scale;
        this.step = stored.step() * (scale.far() - scale.near());
        this.toPixels = toPixels;
        float most = 0;
        float least = Float.POSITIVE_INFINITY;
        for (float number : numbers) {
            float value = (float) scale.inverse(number);
            most = Math.max(most, value);
            least = value > 0 ? Math.min(least, value) : least;
        }
        this.nearest = 1 / (double) most;
        this.farthest = 1 / (double) least;
    }

    /**
     * The depths of a depth pass, whose numbers are read as they are asked for and not copied.
     *
     * @param numbers as the file stores them
     * @param scale what they stand for
     * @param placement from the pixels of the file to the sheet
     */
    public static DepthMap of(StoredNumbers numbers, DepthScale scale, Affine<RasterPoint, SheetPoint> placement) {
        return new DepthMap(numbers, scale, numbers.toFile().then(placement).inverse());
    }

    /** Its size in pixels. */
    public PixelSize size() {
        return size;
    }

    /** From the sheet to its pixels. */
    public Affine<SheetPoint, RasterPoint> toPixels() {
        return toPixels;
    }

    /** The inverse of the depth of the pixel in column x and row y, in 1/m; 0 where nothing is seen. */
    public float inverse(int x, int y) {
        return (float) scale.inverse(numbers[y * size.width() + x]);
    }

    /** Whether there is a pixel in column x and row y. */
    public boolean holds(int x, int y) {
        return x >= 0 && y >= 0 && x < size.width() && y < size.height();
    }

    /** The depth that one step of the file's numbers makes, in metres; 0 where they have no steps. */
    public double step() {
        return step;
    }

    /** The depth of the nearest pixel, in metres; infinite where nothing is seen at all. */
    public double nearest() {
        return nearest;
    }

    /** The depth of the farthest pixel at which something is seen, in metres; 0 where nothing is seen at all. */
    public double farthest() {
        return farthest;
    }

    /** The depth seen at a place of the sheet, in metres, in the pixel that it lies in; infinite where nothing is seen. */
    public double depthAt(SheetPoint seen) {
        double u = Math.floor(toPixels.mapX(seen.x(), seen.y()));
        double v = Math.floor(toPixels.mapY(seen.x(), seen.y()));
        boolean within = u >= 0 && v >= 0 && u < size.width() && v < size.height();
        return within ? 1 / (double) inverse((int) u, (int) v) : Double.POSITIVE_INFINITY;
    }
}
