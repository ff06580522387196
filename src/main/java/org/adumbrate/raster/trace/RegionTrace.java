package org.adumbrate.raster.trace;

import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/**
 * Goes around the pixels of a mask along their sides and draws what it went around with straight lines. Pixels that meet at a
 * corner only are together, so that a slanting rail is not broken. The time grows with the number of pixels.
 */
public final class RegionTrace {
    /** More corners than any drawn region has; what has more is noise, and polygons of it would be of no use. */
    private static final int MOST_CORNERS = 300_000;

    private static final int[] STEP_X = {-1, 0, 1, 0};
    private static final int[] STEP_Y = {0, 1, 0, -1};

    private final Bits inside;
    private final Bits seen;
    private final PixelSize size;
    private final Smoothing smoothing;
    private final int mostCorners;
    private final CrackRing ring = new CrackRing();
    private final VectorPath.Builder<RasterPoint> traced = VectorPath.in(Space.RASTER);
    private int corners;

    private RegionTrace(PixelMask mask, PixelSize size, Smoothing smoothing, int mostCorners) {
        this.inside = Bits.of(mask, size);
        this.seen = new Bits(size);
        this.size = size;
        this.smoothing = smoothing;
        this.mostCorners = mostCorners;
    }

    /**
     * Traces the pixels of a mask. A straight edge comes out straight and in its place to within 0.7 px, a curve as chords to
     * within the tolerance.
     *
     * @param mask asked once for every pixel, row by row
     * @param size of the raster; outside it nothing is covered
     * @return the region in continuous pixels
     * @throws TooManyCornersException if there are more corners than any drawn region has, as in noise
     */
    public static Region<RasterPoint> trace(PixelMask mask, PixelSize size, Smoothing smoothing) {
        return trace(mask, size, smoothing, MOST_CORNERS);
    }

    /**
     * As above, of a mask that is known to be simpler.
     *
     * @param mostCorners more than these are taken for noise
     */
    public static Region<RasterPoint> trace(PixelMask mask, PixelSize size, Smoothing smoothing, int mostCorners) {
        return Region.nested(new RegionTrace(mask, size, smoothing, mostCorners).rings());
    }

    private VectorPath<RasterPoint> rings() {
        for (int y = 0; y < size.height(); y++) {
            for (int x = inside.nextTop(0, y); x < size.width(); x = inside.nextTop(x + 1, y)) {
                if (!seen.at(x, y)) {
                    follow(x, y);
                    if (ring.area() >= smoothing.leastAreaPx()) {
                        corners += new RingFit(ring, smoothing.tolerancePx()).draw(traced);
                        requireDrawn();
                    }
                }
            }
        }
        return traced.build();
    }

    private void requireDrawn() {
        if (corners > mostCorners) {
            throw new TooManyCornersException(mostCorners);
        }
    }

    /** Goes around from the upper side of a pixel, westward, with what is inside on the left hand. */
    private void follow(int column, int row) {
        ring.clear();
        int x = column + 1;
        int y = row;
        int heading = 0;
        do {
            if (heading == 0) {
                seen.set(x - 1, y);
            }
            int nextX = x + STEP_X[heading];
            int nextY = y + STEP_Y[heading];
            ring.add(x, y, nextX, nextY);
            x = nextX;
            y = nextY;
            heading = turned(x, y, heading);
        } while (x != column + 1 || y != row || heading != 0);
    }

    /** The heading from a corner on: right if the pixel ahead on the right is inside, else on along the one on the left. */
    private int turned(int x, int y, int heading) {
        if (ahead(x, y, heading, false)) {
            return (heading + 3) % 4;
        }
        return ahead(x, y, heading, true) ? heading : (heading + 1) % 4;
    }

    /** Whether the pixel ahead of a corner on the left or on the right is inside. */
    private boolean ahead(int x, int y, int heading, boolean left) {
        int toLeft = (heading + (left ? 1 : 3)) % 4;
        int dx = STEP_X[heading] + STEP_X[toLeft];
        int dy = STEP_Y[heading] + STEP_Y[toLeft];
        return inside.at(dx > 0 ? x : x - 1, dy > 0 ? y : y - 1);
    }
}
