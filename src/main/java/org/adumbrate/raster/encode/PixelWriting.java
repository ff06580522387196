package org.adumbrate.raster.encode;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.LightSink;
import org.adumbrate.raster.SrgbCurve;

/** Writes pixels that are in memory as a PNG; one channel if every pixel is grey. */
public final class PixelWriting {
    private static final float[] LIGHT = light();

    private PixelWriting() {}

    private static float[] light() {
        float[] light = new float[256];
        for (int k = 0; k < 256; k++) {
            light[k] = (float) SrgbCurve.decode(k / 255.0);
        }
        return light;
    }

    /**
     * Writes a PNG file.
     *
     * @param pixels {@code 0xrrggbb} of encoded sRGB, row by row; the highest byte is not looked at
     * @return its length in bytes
     */
    public static long png(Path file, PixelSize size, double dpi, int[] pixels) throws IOException {
        PictureFormat format = format(size, dpi, pixels);
        try (PngEncoder encoder = new PngEncoder(file, format)) {
            return write(encoder, format, pixels);
        }
    }

    /** Writes a PNG in memory; parameters as above. */
    public static void png(ByteArrayOutputStream memory, PixelSize size, double dpi, int[] pixels) throws IOException {
        PictureFormat format = format(size, dpi, pixels);
        try (PngEncoder encoder = PngEncoder.into(memory, format)) {
            write(encoder, format, pixels);
        }
    }

    private static PictureFormat format(PixelSize size, double dpi, int[] pixels) {
        return new PictureFormat(size, isGrey(pixels) ? 1 : 3, 8, dpi, 6, false);
    }

    private static long write(PngEncoder encoder, PictureFormat format, int[] pixels) throws IOException {
        PixelSize size = format.size();
        int channels = format.channels();
        LightSink.Filler filler = encoder.filler();
        float[] row = new float[size.width() * channels];
        int rows = format.stripRows();
        for (int top = 0; top < size.height(); top += rows) {
            int count = Math.min(rows, size.height() - top);
            filler.begin(top, count);
            for (int y = top; y < top + count; y++) {
                for (int k = 0; k < row.length; k++) {
                    int pixel = pixels[y * size.width() + k / channels];
                    row[k] = LIGHT[(pixel >> (8 * (channels - 1 - k % channels))) & 0xff];
                }
                filler.row(row);
            }
            encoder.take(filler.end());
        }
        return encoder.finish();
    }

    private static boolean isGrey(int[] pixels) {
        for (int pixel : pixels) {
            int g = pixel >> 8 & 0xff;
            if ((pixel & 0xff) != g || (pixel >> 16 & 0xff) != g) {
                return false;
            }
        }
        return true;
    }
}
