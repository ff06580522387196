package org.adumbrate.drawing;

/** Draws tiles as they are asked for and keeps one row of them. */
final class StreamedInk implements InkSource {
    private final Inks inks;
    private final int first;
    private final InkTile[] tiles;
    private final boolean[] inked;
    private int row = -1;

    StreamedInk(Inks inks) {
        this.inks = inks;
        this.first = inks.grid().firstColumn();
        this.tiles = new InkTile[inks.grid().columns()];
        this.inked = new boolean[tiles.length];
    }

    @Override
    public int[] tile(int column, int wanted) {
        if (wanted != row) {
            row = wanted;
            for (int k = 0; k < tiles.length; k++) {
                draw(k);
            }
        }
        return inked[column - first] ? tiles[column - first].pixels() : null;
    }

    private void draw(int k) {
        int[] shapes = inks.on(first + k, row);
        inked[k] = shapes.length > 0;
        if (inked[k]) {
            if (tiles[k] == null) {
                tiles[k] = new InkTile();
            } else {
                tiles[k].clear();
            }
            inks.draw(shapes, tiles[k], first + k, row);
        }
    }
}
