package org.adumbrate.raster.decode.tiff;

import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.decode.light.Alpha;
import org.adumbrate.raster.decode.light.ColourModel;

/**
 * How a TIFF stores its pixels, once found to be of a kind that is read.
 *
 * @param size its size
 * @param photometric what a pixel means
 * @param alpha what the first extra sample is
 * @param bits of a sample
 * @param floating whether samples are floating-point numbers
 * @param samples of a pixel, extra ones included
 * @param planar whether channels are stored apart
 * @param compression how it is packed
 * @param blocks its strips or tiles
 * @param swapsFloats whether the library leaves the bytes of each number in reverse
 */
record TiffHeader(
        PixelSize size,
        Photometric photometric,
        Alpha alpha,
        int bits,
        boolean floating,
        int samples,
        boolean planar,
        TiffCompression compression,
        TiffBlocks blocks,
        boolean swapsFloats) {

    /** What a pixel means (TIFF 6.0, PhotometricInterpretation). */
    enum Photometric {
        WHITE_IS_ZERO(ColourModel.GREY),
        BLACK_IS_ZERO(ColourModel.GREY),
        RGB(ColourModel.RGB),
        PALETTE(ColourModel.RGB),
        INKS(ColourModel.CMYK);

        private final ColourModel model;

        Photometric(ColourModel model) {
            this.model = model;
        }

        /** The colour of its pixels. */
        ColourModel model() {
            return model;
        }
    }

    /** Samples of a pixel that are stored for its colour. */
    int colours() {
        return photometric == Photometric.PALETTE ? 1 : photometric.model().channels();
    }

    /** Samples of a pixel that are used: colour and alpha. */
    int used() {
        return colours() + alpha.channels();
    }

    /** The type in which integer and floating-point samples are delivered. */
    SampleType type() {
        if (floating) {
            return SampleType.FLOAT;
        }
        return bits <= 8 ? SampleType.BYTE : SampleType.SHORT;
    }
}
