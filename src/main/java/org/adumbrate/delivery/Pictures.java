package org.adumbrate.delivery;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.encode.PictureFormat;
import org.adumbrate.raster.encode.PngEncoder;
import org.adumbrate.raster.encode.StripEncoder;
import org.adumbrate.raster.encode.TiffEncoder;

/** Begins pictures as they are asked for. */
public final class Pictures {
    private Pictures() {}

    /** What a picture is to be written as. */
    static PictureFormat format(PictureRequest request, PixelSize size, double dpi, int channels) {
        return new PictureFormat(
                size,
                request.channels().orElse(channels),
                request.bits(),
                dpi,
                request.level().orElse(PictureFormat.DEFAULT_LEVEL),
                request.dithered());
    }

    /** How the strips of a picture are packed. */
    static String packing(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".png") ? "png" : "tiff";
    }

    /** Begins a picture: a PNG if its name ends so, else a TIFF. */
    static StripEncoder begin(Path file, PictureFormat format, int stripRows) throws IOException {
        return packing(file).equals("png") ? new PngEncoder(file, format) : new TiffEncoder(file, format, stripRows);
    }
}
