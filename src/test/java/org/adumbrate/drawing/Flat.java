package org.adumbrate.drawing;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.raster.LightSink;
import org.adumbrate.raster.SrgbCurve;
import org.adumbrate.raster.encode.PixelArray;

/** Flat drawings in memory, over an underlay of one tone. */
final class Flat {
    static final int PAPER = 255;

    private Flat() {}

    /** In colour over paper. */
    static BufferedImage image(SheetSize sheet, PixelSize size, List<Layer> layers) throws IOException {
        return image(sheet, size, 3, layers, PAPER, 48);
    }

    /** @param tone the encoded level of the underlay, which is grey */
    static BufferedImage image(
            SheetSize sheet, PixelSize size, int channels, List<Layer> layers, int tone, int stripRows)
            throws IOException {
        PixelArray pixels = new PixelArray(size, channels);
        float[] underlay = new float[size.width()];
        Arrays.fill(underlay, (float) SrgbCurve.decode(tone / 255.0));
        FlatDrawing flat = new FlatDrawing(Canvas.whole(sheet, size), 1, layers, channels, pixels);
        LightSink.Filler filler = flat.filler();
        for (int y = 0; y < size.height(); y += stripRows) {
            int rows = Math.min(stripRows, size.height() - y);
            filler.begin(y, rows);
            for (int row = 0; row < rows; row++) {
                filler.row(underlay);
            }
            flat.take(filler.end());
        }
        BufferedImage image = new BufferedImage(size.width(), size.height(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, size.width(), size.height(), pixels.pixels(), 0, size.width());
        return image;
    }

    /** The mean difference of a colour component, in levels of 255. */
    static double meanDifference(BufferedImage a, BufferedImage b) {
        return differences(a, b).average().orElseThrow();
    }

    /** The largest difference of a colour component, in levels of 255. */
    static int mostDifference(BufferedImage a, BufferedImage b) {
        return differences(a, b).max().orElseThrow();
    }

    private static java.util.stream.IntStream differences(BufferedImage a, BufferedImage b) {
        if (a.getWidth() != b.getWidth() || a.getHeight() != b.getHeight()) {
            throw new AssertionError("pictures of two sizes");
        }
        int[] one = a.getRGB(0, 0, a.getWidth(), a.getHeight(), null, 0, a.getWidth());
        int[] other = b.getRGB(0, 0, a.getWidth(), a.getHeight(), null, 0, a.getWidth());
        return java.util.stream.IntStream.range(0, 3 * one.length).map(k -> {
            int shift = k % 3 * 8;
            return Math.abs((one[k / 3] >> shift & 0xff) - (other[k / 3] >> shift & 0xff));
        });
    }
}
