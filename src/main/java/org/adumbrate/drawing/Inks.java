package org.adumbrate.drawing;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.BoxIndex;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.raster.Luminance;
import org.adumbrate.raster.SrgbTable;

/** Layers made ready to be drawn on the tiles that a canvas's window needs; safe for use by several threads. */
final class Inks {
    /** Shapes that lie so far off are made ready with those that show, in mm: a wider pen may need them. */
    private static final double MARGIN_MM = 10;

    private final TileGrid grid;
    private final List<Brush> brushes;

    /** The number of each brush's first shape, counted through all brushes; then how many there are. */
    private final int[] firsts;

    private final BoxIndex boxes;

    /**
     * @param layers those that are not shown are left out
     * @param grey whether colours are drawn as the grey of their luminance
     */
    Inks(Canvas canvas, List<Layer> layers, boolean grey) {
        this(new TileGrid(canvas), brushes(new TileGrid(canvas), layers, grey));
    }

    private Inks(TileGrid grid, List<Brush> brushes) {
        this.grid = grid;
        this.brushes = brushes;
        this.firsts = new int[brushes.size() + 1];
        List<Extent> reaches = new ArrayList<>();
        for (int k = 0; k < brushes.size(); k++) {
            reaches.addAll(brushes.get(k).reaches());
            firsts[k + 1] = reaches.size();
        }
        this.boxes = BoxIndex.of(reaches);
    }

    private static List<Brush> brushes(TileGrid grid, List<Layer> layers, boolean grey) {
        List<Brush> brushes = new ArrayList<>();
        for (Layer layer : layers) {
            if (layer.shown()) {
                for (Paint paint : Paint.of(layer)) {
                    brushes.add(new Brush(paint, color(paint, grey), pxPerMm(grid), grid.extent()));
                }
            }
        }
        return brushes;
    }

    /**
     * One paint.
     *
     * @param grey whether its colour is drawn as the grey of its luminance
     * @param alike a paint of the same paths on the same canvas that is ready already
     */
    static Inks of(Canvas canvas, Paint paint, boolean grey, Optional<Inks> alike) {
        TileGrid grid = new TileGrid(canvas);
        Optional<Brush> other = alike.map(inks -> inks.brushes.get(0).as(paint, color(paint, grey), pxPerMm(grid)))
                .filter(brush -> brush.reach() <= MARGIN_MM);
        return new Inks(
                grid,
                List.of(other.orElseGet(() -> new Brush(
                        paint, color(paint, grey), pxPerMm(grid), grid.extent().grown(MARGIN_MM)))));
    }

    private static Srgb color(Paint paint, boolean grey) {
        return grey ? grey(paint.color()) : paint.color();
    }

    private static double pxPerMm(TileGrid grid) {
        return Math.sqrt(grid.canvas().pxPerMmAcross() * grid.canvas().pxPerMmDown());
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
