package org.adumbrate.figure.shadow;

import java.util.Arrays;
import org.adumbrate.figure.depth.DepthMap;

/** Between which inverses of depth all that is seen in a tile of a depth pass lies, for tiles of 16 x 16 pixels. */
final class DepthTiles {
    static final int TILE = 16;

    private final int across;
    private final int down;
    private final float[] least;
    private final float[] greatest;

    DepthTiles(DepthMap depth) {
        int width = depth.size().width();
        this.across = (width + TILE - 1) / TILE;
        this.down = (depth.size().height() + TILE - 1) / TILE;
        this.least = new float[across * down];
        this.greatest = new float[across * down];
        Arrays.fill(least, Float.POSITIVE_INFINITY);
        for (int y = 0; y < depth.size().height(); y++) {
            for (int tile = 0; tile < across; tile++) {
                add(depth, y, tile * TILE, Math.min(width, tile * TILE + TILE), y / TILE * across + tile);
            }
        }
    }

    private void add(DepthMap depth, int y, int from, int to, int tile) {
        float low = least[tile];
        float high = greatest[tile];
        for (int x = from; x < to; x++) {
            float inverse = depth.inverse(x, y);
            low = inverse > 0 && inverse < low ? inverse : low;
            high = inverse > high ? inverse : high;
        }
        least[tile] = low;
        greatest[tile] = high;
    }

    /** The rows of tiles. */
    int rows() {
        return down;
    }

    /** The least inverse in a row of tiles; infinite where nothing is seen. */
    double leastInRow(int row) {
        float low = Float.POSITIVE_INFINITY;
        for (int k = row * across; k < (row + 1) * across; k++) {
            low = Math.min(low, least[k]);
        }
        return low;
    }

    /**
     * Widens bounds so that they hold all that is seen between two corners, in pixels; what lies beyond the pass is passed over.
     */
    void widen(double left, double top, double right, double bottom, InverseBounds bounds) {
        int lastRow = (int) Math.min(down - 1.0, Math.floor(bottom / TILE));
        int lastColumn = (int) Math.min(across - 1.0, Math.floor(right / TILE));
        for (int row = (int) Math.max(0, Math.floor(top / TILE)); row <= lastRow; row++) {
            for (int column = (int) Math.max(0, Math.floor(left / TILE)); column <= lastColumn; column++) {
                bounds.hold(least[row * across + column], greatest[row * across + column]);
            }
        }
    }
}
