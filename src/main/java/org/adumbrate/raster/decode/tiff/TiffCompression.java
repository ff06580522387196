package org.adumbrate.raster.decode.tiff;

import java.io.IOException;
import org.adumbrate.raster.decode.source.SourceFile;

/** The compressions of TIFF that are read, and for how many bytes one may stand in each. */
enum TiffCompression {
    NONE(1),
    /** Two bytes for 128 (TIFF 6.0, section 9). */
    PACK_BITS(64),
    /** A code of 12 bits for a string of up to 4096 bytes (section 13). */
    LZW(4096),
    DEFLATE(1032),
    /** A bit for a row that repeats the one above. */
    FAX(1 << 20),
    /** A bit for a block of 64 samples. */
    JPEG(64 * 8);

    private final int largestRatio;

    TiffCompression(int largestRatio) {
        this.largestRatio = largestRatio;
    }

    /** The most bytes that one byte may stand for. */
    int largestRatio() {
        return largestRatio;
    }

    /** The compression of a number in the standard. */
    static TiffCompression of(SourceFile file, int number) throws IOException {
        return switch (number) {
            case 1 -> NONE;
            case 2, 3, 4 -> FAX;
            case 5 -> LZW;
            case 7 -> JPEG;
            case 8, 32946 -> DEFLATE;
            case 32773 -> PACK_BITS;
            default -> throw file.unsupported("TIFF compressed by " + name(number));
        };
    }

    private static String name(int number) {
        return switch (number) {
            case 6 -> "the old kind of JPEG";
            case 34712 -> "JPEG 2000";
            case 34887 -> "LERC";
            case 34892 -> "lossy JPEG of raw pictures";
            case 34925 -> "LZMA";
            case 50000 -> "Zstandard";
            case 50001 -> "WebP";
            case 50002 -> "JPEG XL";
            default -> "method " + number;
        };
    }
}
