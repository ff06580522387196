package org.adumbrate.drawing;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.BoxIndex;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.raster.Luminance;
import org.adumbrate.raster.SrgbTable;

/** Layers made ready to be drawn on the tiles that a canvas's window needs; safe for use by several threads. */
final class Inks {
    private final TileGrid grid;
    private final List<Brush> brushes = new ArrayList<>();

    /** The number of each brush's first shape, counted through all brushes; then how many there are. */
    private final int[] firsts;

    private final BoxIndex boxes;

    /**
     * @param layers those that are not shown are left out
     * @param grey whether colours are drawn as the grey of their luminance
     */
    Inks(Canvas canvas, List<Layer> layers, boolean grey) {
        this.grid = new TileGrid(canvas);
        double pxPerMm = Math.sqrt(canvas.pxPerMmAcross() * canvas.pxPerMmDown());
        Extent within = new Extent(
                grid.leftMm(grid.firstColumn()),
                grid.topMm(grid.firstRow()),
                grid.leftMm(grid.firstColumn() + grid.columns()),
                grid.topMm(grid.firstRow() + grid.rows()));
        List<Extent> reaches = new ArrayList<>();
        for (Layer layer : layers) {
            if (layer.shown()) {
                for (Paint paint : Paint.of(layer)) {
                    Srgb color = grey ? grey(paint.color()) : paint.color();
                    brushes.add(new Brush(paint, color, pxPerMm, within));
                }
            }
        }
        this.firsts = new int[brushes.size() + 1];
        for (int k = 0; k < brushes.size(); k++) {
            reaches.addAll(brushes.get(k).reaches());
            firsts[k + 1] = reaches.size();
        }
        this.boxes = BoxIndex.of(reaches);
    }

    /** The grey of the same luminance. */
    static Srgb grey(Srgb color) {
        float light = Luminance.of(light(color.red()), light(color.green()), light(color.blue()));
        int level = Math.round(255 * SrgbTable.encode(light));
        return new Srgb(level, level, level);
    }

    private static float light(int level) {
        return SrgbTable.decode(level / 255f);
    }

    /** The tiles. */
    TileGrid grid() {
        return grid;
    }

    /** The numbers of the shapes that may show on a tile, in drawing order. */
    int[] on(int column, int row) {
        return boxes.touching(grid.leftMm(column), grid.topMm(row), grid.leftMm(column + 1), grid.topMm(row + 1));
    }

    /** Draws shapes on a tile, over what is on it. */
    void draw(int[] shapes, InkTile tile, int column, int row) {
        if (shapes.length == 0) {
            return;
        }
        Graphics2D graphics = tile.graphics(grid, column, row);
        try {
            int brush = -1;
            for (int shape : shapes) {
                int before = brush;
                while (brush < 0 || shape >= firsts[brush + 1]) {
                    brush++;
                }
                if (brush != before) {
                    brushes.get(brush).dip(graphics);
                }
                brushes.get(brush).draw(graphics, shape - firsts[brush]);
            }
        } finally {
            graphics.dispose();
        }
    }
}
