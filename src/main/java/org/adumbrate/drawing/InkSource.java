package org.adumbrate.drawing;

/** Tiles with the ink of a drawing on them; for use by one thread. */
interface InkSource {
    /** The pixels of a tile, as {@link InkTile#pixels}, valid until another row of tiles is asked for; null if nothing is on it. */
    int[] tile(int column, int row);
}
