package org.adumbrate.raster.decode.light;

import org.adumbrate.raster.LightDecoder;
import org.adumbrate.raster.SampleType;

/** How a pixel is stored: its colour channels, then alpha if any, all of one type. */
public record PixelLayout(ColourModel colour, Alpha alpha, SampleType type) {
    /** Samples of a pixel. */
    public int channels() {
        return colour.channels() + alpha.channels();
    }

    /**
     * The decoder of such pixels. Floating-point samples are taken to be linear already, whatever the colorimetry.
     */
    public LightDecoder decoder(Colorimetry colorimetry) {
        if (type == SampleType.FLOAT) {
            return over(new FloatDecoder(colour.channels()));
        }
        // Dividing by alpha makes values between the codes; 16 bits keep them.
        return over(colorimetry.decoder(alpha == Alpha.ASSOCIATED ? SampleType.SHORT : type));
    }

    private LightDecoder over(LightDecoder opaque) {
        return alpha == Alpha.NONE ? opaque : new PaperDecoder(opaque, alpha);
    }
}
