package org.adumbrate.raster.decode.tiff;

import java.io.IOException;
import java.nio.ByteOrder;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.decode.light.Alpha;
import org.adumbrate.raster.decode.metadata.TiffFields;
import org.adumbrate.raster.decode.metadata.TiffTag;
import org.adumbrate.raster.decode.source.SourceFile;
import org.adumbrate.raster.decode.tiff.TiffHeader.Photometric;

/** Finds out from the fields of a TIFF how its pixels are stored, or what about them is not read. */
final class TiffHeaderReader {
    private static final int UNSIGNED = 1;
    private static final int FLOATING = 3;
    private static final int UNDEFINED = 4;
    private static final int FLOATING_PREDICTOR = 3;
    private static final int CMYK_INKS = 1;

    private final SourceFile file;
    private final TiffFields fields;

    private TiffHeaderReader(SourceFile file, TiffFields fields) {
        this.file = file;
        this.fields = fields;
    }

    static TiffHeader read(SourceFile file, TiffFields fields) throws IOException {
        return new TiffHeaderReader(file, fields).read();
    }

    private TiffHeader read() throws IOException {
        PixelSize size = file.checkedSize(fields.number(TiffTag.WIDTH, 0), fields.number(TiffTag.HEIGHT, 0));
        TiffCompression compression = TiffCompression.of(file, (int) fields.number(TiffTag.COMPRESSION, 1));
        int samples = (int) fields.number(TiffTag.SAMPLES_PER_PIXEL, 1);
        if (samples < 1 || samples > 32) {
            throw file.damaged("it states " + samples + " samples a pixel");
        }
        Photometric photometric = photometric(compression);
        int bits = bits();
        boolean floating = floating(bits);
        Alpha alpha = alpha(photometric, samples);
        boolean planar = samples > 1 && fields.number(TiffTag.PLANAR_CONFIGURATION, 1) == 2;
        TiffBlocks blocks = TiffBlocks.read(file, fields, size, planar ? samples : 1);
        // The library undoes the predictor as if the file's order of bytes were the predictor's own.
        boolean swaps = floating
                && fields.number(TiffTag.PREDICTOR, 1) == FLOATING_PREDICTOR
                && fields.order() == ByteOrder.BIG_ENDIAN;
        TiffHeader header =
                new TiffHeader(size, photometric, alpha, bits, floating, samples, planar, compression, blocks, swaps);
        requireReadable(header);
        if (compression == TiffCompression.JPEG) {
            TiffJpeg.check(file, fields, blocks);
        }
        long rowBytes = ((long) size.width() * samples * bits + 7) / 8;
        file.requireBytes(size, rowBytes * size.height() / compression.largestRatio());
        return header;
    }

    private Photometric photometric(TiffCompression compression) throws IOException {
        int number = (int) fields.number(TiffTag.PHOTOMETRIC, compression == TiffCompression.FAX ? 0 : 1);
        return switch (number) {
            case 0 -> Photometric.WHITE_IS_ZERO;
            case 1 -> Photometric.BLACK_IS_ZERO;
            case 2 -> Photometric.RGB;
            case 3 -> Photometric.PALETTE;
            case 5 -> inks();
            case 6 -> lumaAndChroma(compression);
            case 8, 9, 10 -> throw file.unsupported("TIFF in L*a*b*");
            default -> throw file.unsupported("TIFF of photometric kind " + number);
        };
    }

    /** The library turns it into colour where it is JPEG that holds it. */
    private Photometric lumaAndChroma(TiffCompression compression) throws IOException {
        if (compression != TiffCompression.JPEG) {
            throw file.unsupported("TIFF of luma and chroma (YCbCr) other than JPEG");
        }
        return Photometric.RGB;
    }

    private Photometric inks() throws IOException {
        if (fields.number(TiffTag.INK_SET, CMYK_INKS) != CMYK_INKS) {
            throw file.unsupported("TIFF of inks other than cyan, magenta, yellow and black");
        }
        return Photometric.INKS;
    }

    private int bits() throws IOException {
        long[] bits = fields.numbers(TiffTag.BITS_PER_SAMPLE);
        long first = bits.length == 0 ? 1 : bits[0];
        for (long other : bits) {
            if (other != first) {
                throw file.unsupported("TIFF whose channels differ in bits");
            }
        }
        return (int) first;
    }

    private boolean floating(int bits) throws IOException {
        int format = (int) fields.number(TiffTag.SAMPLE_FORMAT, UNSIGNED);
        if (format == FLOATING) {
            if (bits != 16 && bits != 32 && bits != 64) {
                throw file.unsupported("TIFF of floating-point numbers of " + bits + " bits");
            }
            return true;
        }
        if (format != UNSIGNED && format != UNDEFINED) {
            throw file.unsupported("TIFF of signed or complex numbers");
        }
        return false;
    }

    /**
     * ExtraSamples (TIFF 6.0, section 18): 1 is associated alpha, 2 straight, 0 something else, which is no business of the
     * picture. The field must be there if there are more samples than the colour needs. Where it is missing all the same,
     * every reader in the field takes the fourth sample of RGB for alpha, most of them for straight alpha: so do we.
     */
    private Alpha alpha(Photometric photometric, int samples) throws IOException {
        int colours =
                photometric == Photometric.PALETTE ? 1 : photometric.model().channels();
        if (samples < colours) {
            throw file.damaged("it states " + samples + " samples a pixel, its colour needs " + colours);
        }
        if (samples == colours || photometric == Photometric.PALETTE) {
            return Alpha.NONE;
        }
        if (hasUnnamedAlpha(fields, photometric, samples)) {
            return Alpha.STRAIGHT;
        }
        return switch ((int) fields.number(TiffTag.EXTRA_SAMPLES, 0)) {
            case 1 -> Alpha.ASSOCIATED;
            case 2 -> Alpha.STRAIGHT;
            default -> Alpha.NONE;
        };
    }

    private static boolean hasUnnamedAlpha(TiffFields fields, Photometric photometric, int samples) {
        return photometric == Photometric.RGB && samples == 4 && !fields.has(TiffTag.EXTRA_SAMPLES);
    }

    private void requireReadable(TiffHeader header) throws IOException {
        int bits = header.bits();
        boolean single = header.samples() == 1;
        if (header.compression() == TiffCompression.FAX && (bits != 1 || !single)) {
            throw file.unsupported("fax compression of " + header.samples() + " samples of " + bits + " bits");
        }
        boolean read = header.floating()
                || bits == 8
                || bits == 16
                || (single && (bits == 1 || bits == 2 || bits == 4 || bits == 32))
                || (bits == 10 || bits == 12 || bits == 14);
        if (!read || (header.photometric() == Photometric.PALETTE && bits > 8)) {
            throw file.unsupported("TIFF of " + header.samples() + " samples of " + bits + " bits");
        }
    }
}
