package org.adumbrate.raster.decode;

import java.io.IOException;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.decode.bmp.BmpReader;
import org.adumbrate.raster.decode.jpeg.JpegReader;
import org.adumbrate.raster.decode.netpbm.PnmReader;
import org.adumbrate.raster.decode.png.PngReader;
import org.adumbrate.raster.decode.radiance.HdrReader;
import org.adumbrate.raster.decode.source.SourceFile;
import org.adumbrate.raster.decode.tiff.TiffReader;

/** The formats that are read, told by their first bytes. */
enum FileKind {
    PNG("89 50 4E 47 0D 0A 1A 0A"),
    JPEG("FF D8 FF"),
    TIFF("49 49 2A 00 | 4D 4D 00 2A | 49 49 2B 00 | 4D 4D 00 2B"),
    BMP("42 4D"),
    PNM("50 31 | 50 32 | 50 33 | 50 34 | 50 35 | 50 36"),
    PAM("50 37 0A"),
    HDR("23 3F 52 41 44 49 41 4E 43 45 | 23 3F 52 47 42 45");

    private final String magic;

    FileKind(String magic) {
        this.magic = magic;
    }

    /** Whether a file begins so. */
    boolean matches(byte[] head) {
        return Magic.matches(magic, head);
    }

    /** Opens such a file. */
    RasterReader open(SourceFile file) throws IOException {
        return switch (this) {
            case PNG -> PngReader.open(file);
            case JPEG -> JpegReader.open(file);
            case TIFF -> TiffReader.open(file);
            case BMP -> BmpReader.open(file);
            case PNM, PAM -> PnmReader.open(file);
            case HDR -> HdrReader.open(file);
        };
    }
}
