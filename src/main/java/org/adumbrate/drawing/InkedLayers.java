package org.adumbrate.drawing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.raster.OrderedStrips;

/**
 * Layers drawn on the tiles of a canvas's window and held, to be laid over light again and again: what comes of it is the same, byte for
 * byte, as when they are drawn anew. Further layers may be drawn on top, which makes another value; tiles that they leave alone are shared.
 * Never changed, and safe for use by several threads.
 *
 * <p>Two pictures that are drawn apart and then laid over each other would not do: source-over with 8-bit samples rounds at each step and
 * is not associative. So what lies above is always drawn onto a copy of what is below.
 */
public final class InkedLayers {
    private final TileGrid grid;
    private final int channels;
    private final InkTile[] tiles;

    private InkedLayers(TileGrid grid, int channels, InkTile[] tiles) {
        this.grid = grid;
        this.channels = channels;
        this.tiles = tiles;
    }

    /**
     * No layers.
     *
     * @param channels of the pictures that they are laid over: with 1 colours have their luminance
     */
    public static InkedLayers bare(Canvas canvas, int channels) {
        TileGrid grid = new TileGrid(canvas);
        return new InkedLayers(grid, channels, new InkTile[grid.columns() * grid.rows()]);
    }

    /** The same with layers drawn on top; those that are not shown are left out. */
    public InkedLayers with(List<Layer> layers, int threads) throws IOException {
        Inks inks = inks(layers);
        return drawn(threads, (column, row) -> {
            int[] shapes = inks.on(column, row);
            InkTile below = tile(column, row);
            return shapes.length == 0 ? below : onCopy(below, List.of(inks), column, row);
        });
    }

    /** Layers made ready for its canvas. */
    Inks inks(List<Layer> layers) {
        return new Inks(grid.canvas(), layers, channels == 1);
    }

    /**
     * A paint made ready for its canvas.
     *
     * @param alike a paint of the same paths that is ready already
     */
    Inks inks(Paint paint, Optional<Inks> alike) {
        return Inks.of(grid.canvas(), paint, channels == 1, alike);
    }

    /** How many tiles there are. */
    int count() {
        return tiles.length;
    }

    /** The number of a tile. */
    int at(int column, int row) {
        return (row - grid.firstRow()) * grid.columns() + column - grid.firstColumn();
    }

    /** What a tile is to be. */
    interface Choice {
        /** The tile in a column and row of the grid; null if nothing is on it. */
        InkTile tile(int column, int row) throws IOException;
    }

    /** Another with the same canvas, whose tiles are chosen by several threads. */
    InkedLayers drawn(int threads, Choice choice) throws IOException {
        InkTile[] chosen = new InkTile[tiles.length];
        OrderedStrips.<Object, Boolean>run(
                tiles.length,
                threads,
                () -> choice,
                (context, k) -> {
                    chosen[k] =
                            choice.tile(grid.firstColumn() + k % grid.columns(), grid.firstRow() + k / grid.columns());
                    return true;
                },
                (k, done) -> {});
        return new InkedLayers(grid, channels, chosen);
    }

    /** A copy of a tile with all that some layers leave on it drawn on top, in order. */
    static InkTile onCopy(InkTile below, List<Inks> layers, int column, int row) {
        InkTile tile = below == null ? new InkTile() : below.copy();
        for (Inks inks : layers) {
            inks.draw(inks.on(column, row), tile, column, row);
        }
        return tile;
    }

    /** The tile in a column and row of the grid; null if nothing is on it. */
    InkTile tile(int column, int row) {
        return tiles[at(column, row)];
    }

    /** The tiles with ink on them, where they lie in the window. */
    public List<InkedTile> inked() {
        List<InkedTile> inked = new ArrayList<>();
        for (int row = grid.firstRow(); row < grid.firstRow() + grid.rows(); row++) {
            for (int column = grid.firstColumn(); column < grid.firstColumn() + grid.columns(); column++) {
                InkTile tile = tile(column, row);
                if (tile != null) {
                    inked.add(new InkedTile(tile, column, row, grid.inWindow(column, row)));
                }
            }
        }
        return inked;
    }

    /** The canvas. */
    public Canvas canvas() {
        return grid.canvas();
    }

    /** The channels of the pictures that they are laid over. */
    public int channels() {
        return channels;
    }

    /** Where others of the same canvas may differ from these: in parts of the window that share no pixel. */
    public List<PixelBox> changes(InkedLayers others) {
        List<PixelBox> changes = new ArrayList<>();
        for (int row = grid.firstRow(); row < grid.firstRow() + grid.rows(); row++) {
            for (int column = grid.firstColumn(); column < grid.firstColumn() + grid.columns(); column++) {
                if (tile(column, row) != others.tile(column, row)) {
                    changes.add(grid.inWindow(column, row));
                }
            }
        }
        return changes;
    }
}
