package org.adumbrate.hostile;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.DecodedRows;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.SrgbCurve;
import org.adumbrate.raster.decode.RasterFiles;

/** A picture as it would lie on white paper, turned for viewing: encoded sRGB, 0 to 1, three values a pixel. */
@SuppressWarnings("ArrayRecordComponent") // compared by share, never as a whole
record SheetPicture(PixelSize size, float[] rgb) {
    /** Two values are the same if they differ by no more than this: three levels of 255. */
    static final float SLACK = 3 / 255f;

    private static final long MOST_PIXELS = 4_000_000;

    /** What the program makes of a file; empty if it is too large. */
    static Optional<SheetPicture> of(Path file) throws IOException {
        RasterReader reader = RasterFiles.open(file);
        if (!mayBeCompared(reader.info().size())) {
            reader.close();
            return Optional.empty();
        }
        try (DecodedRows rows = DecodedRows.whole(reader, Long.MAX_VALUE)) {
            PixelSize size = rows.size();
            float[] light = new float[(int) size.count() * rows.channels()];
            rows.read(0, 0, size.width(), size.height(), light);
            float[] rgb = new float[(int) size.count() * 3];
            for (int i = 0; i < rgb.length; i++) {
                rgb[i] = encoded(rows.channels() == 1 ? light[i / 3] : light[i]);
            }
            return Optional.of(new SheetPicture(size, rgb));
        }
    }

    /** Whether a picture of such a size is small enough. */
    static boolean mayBeCompared(PixelSize size) {
        return size.count() <= MOST_PIXELS;
    }

    /** A picture of straight red, green, blue and alpha, 16 bits each, the colour in sRGB; laid over white in light. */
    static SheetPicture ofStraight(PixelSize size, short[] rgba) {
        float[] rgb = new float[(int) size.count() * 3];
        for (int i = 0; i < rgb.length; i++) {
            double alpha = (rgba[i / 3 * 4 + 3] & 0xffff) / 65535.0;
            double light = SrgbCurve.decode((rgba[i / 3 * 4 + i % 3] & 0xffff) / 65535.0);
            rgb[i] = encoded((float) (light * alpha + 1 - alpha));
        }
        return new SheetPicture(size, rgb);
    }

    private static float encoded(float light) {
        return (float) SrgbCurve.encode(Math.max(0, Math.min(1, light)));
    }

    /** The share of values that differ by more than {@link #SLACK}. */
    double shareOff(SheetPicture other) {
        int off = 0;
        for (int i = 0; i < rgb.length; i++) {
            off += isOff(other, i) ? 1 : 0;
        }
        return (double) off / rgb.length;
    }

    /** In words, the first pixel that differs. */
    String firstOff(SheetPicture other) {
        int i = 0;
        while (i < rgb.length - 1 && !isOff(other, i)) {
            i++;
        }
        int pixel = i / 3;
        return "(" + pixel % size.width() + ", " + pixel / size.width() + ") " + code(pixel) + ", there "
                + other.code(pixel);
    }

    private boolean isOff(SheetPicture other, int i) {
        return !(Math.abs(rgb[i] - other.rgb[i]) <= SLACK);
    }

    private String code(int pixel) {
        return Math.round(255 * rgb[3 * pixel]) + " " + Math.round(255 * rgb[3 * pixel + 1]) + " "
                + Math.round(255 * rgb[3 * pixel + 2]);
    }
}
