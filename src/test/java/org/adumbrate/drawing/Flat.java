package org.adumbrate.drawing;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.raster.SrgbCurve;
import org.adumbrate.raster.encode.PictureFormat;
import org.adumbrate.raster.encode.PixelArray;
import org.adumbrate.raster.encode.StripEncoder;

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
        PictureFormat format = new PictureFormat(size, channels, 8, 72, 1, true);
        PixelArray pixels = new PixelArray(size, channels);
        float[] underlay = new float[size.width()];
        Arrays.fill(underlay, (float) SrgbCurve.decode(tone / 255.0));
        try (FlatDrawing flat = new FlatDrawing(sheet, 1, layers, format, pixels)) {
            StripEncoder.Packer packer = flat.packer();
            for (int y = 0; y < size.height(); y += stripRows) {
                int rows = Math.min(stripRows, size.height() - y);
                packer.begin(y, rows);
                for (int row = 0; row < rows; row++) {
                    packer.row(underlay);
                }
                flat.append(packer.pack());
            }
            flat.finish();
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
