package org.adumbrate.geometry;

import java.util.ArrayList;
import java.util.List;

/** Windows that cover a grid, for tests of the law that a window is the crop of the whole. */
public final class Tiling {
    private Tiling() {}

    /** Every window of so many pixels a side, and the smaller ones at the right and below. */
    public static List<PixelBox> of(PixelSize whole, int side) {
        List<PixelBox> tiles = new ArrayList<>();
        for (int y = 0; y < whole.height(); y += side) {
            for (int x = 0; x < whole.width(); x += side) {
                tiles.add(new PixelBox(x, y, Math.min(side, whole.width() - x), Math.min(side, whole.height() - y)));
            }
        }
        return tiles;
    }
}
