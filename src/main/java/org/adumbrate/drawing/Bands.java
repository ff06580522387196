package org.adumbrate.drawing;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Srgb;

/**
 * Layers drawn with Java2D on a transparent canvas, a band of rows at a time. Where bands begin is fixed: clipping
 * changes a rounding here and there in how a curve is drawn, so bands that followed the rows asked for would show in the
 * pixels.
 */
final class Bands {
    /** The rows of a band; the first begins at row 0. */
    static final int ROWS = 64;

    private final PixelSize canvas;
    private final double pxPerMmAcross;
    private final double pxPerMmDown;
    private final List<Brush> brushes = new ArrayList<>();

    /**
     * @param canvas covers the sheet
     * @param layers those that are not shown are left out
     * @param colors gives the colour that stands for another on this canvas
     */
    Bands(SheetSize sheet, PixelSize canvas, List<Layer> layers, UnaryOperator<Srgb> colors) {
        this.canvas = canvas;
        this.pxPerMmAcross = canvas.width() / sheet.widthMm();
        this.pxPerMmDown = canvas.height() / sheet.heightMm();
        double pxPerMm = Math.sqrt(pxPerMmAcross * pxPerMmDown);
        for (Layer layer : layers) {
            if (layer.shown()) {
                Paint.of(layer).forEach(paint -> brushes.add(new Brush(paint, colors.apply(paint.color()), pxPerMm)));
            }
        }
    }

    /** A band for use by one thread. */
    Band band() {
        return new Band();
    }

    /** The band that was looked at last. */
    final class Band {
        private BufferedImage image;
        private int[] pixels;
        private int number = -1;
        private boolean bare;

        private Band() {}

        /** Turns to the band with a row; true if there may be something on it. */
        boolean turnTo(int y) {
            if (y / ROWS != number) {
                number = y / ROWS;
                draw();
            }
            return !bare;
        }

        /** The pixels of the band, row by row: {@code 0xaarrggbb}, encoded sRGB multiplied by alpha. */
        int[] pixels() {
            return pixels;
        }

        /** Where a row of the band begins in its pixels. */
        int start(int y) {
            return (y - number * ROWS) * canvas.width();
        }

        private void draw() {
            double topMm = number * ROWS / pxPerMmDown;
            double bottomMm = (number + 1) * ROWS / pxPerMmDown;
            List<Brush> here = brushes.stream()
                    .filter(brush -> brush.reaches(topMm, bottomMm))
                    .toList();
            bare = here.isEmpty();
            if (bare) {
                return;
            }
            clear();
            Graphics2D graphics = image.createGraphics();
            try {
                graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
                graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
                graphics.translate(0, -number * ROWS);
                graphics.scale(pxPerMmAcross, pxPerMmDown);
                here.forEach(brush -> brush.draw(graphics, topMm, bottomMm));
            } finally {
                graphics.dispose();
            }
        }

        private void clear() {
            if (image == null) {
                int rows = Math.min(ROWS, canvas.height());
                image = new BufferedImage(canvas.width(), rows, BufferedImage.TYPE_INT_ARGB_PRE);
                pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
            }
            Arrays.fill(pixels, 0);
        }
    }
}
