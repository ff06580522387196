package org.adumbrate.raster.decode.light;

import org.adumbrate.raster.LightDecoder;
import org.adumbrate.raster.SampleType;

/** What the colour samples of a file mean, apart from the type in which they are stored and from any alpha. */
public interface Colorimetry {
    /** A decoder of opaque pixels of an integer type. */
    LightDecoder decoder(SampleType type);

    /** One curve for every channel, whose primaries are those of sRGB (or which is grey). */
    static Colorimetry curve(int channels, Curve curve) {
        return type -> new CurveDecoder(channels, curve.table(type));
    }

    /** What a file means that says nothing. */
    static Colorimetry untagged(ColourModel model) {
        return model == ColourModel.CMYK ? PlainCmykDecoder::new : curve(model.channels(), Curve.SRGB);
    }

    /** Three curves and a matrix from their light to linear sRGB. */
    static Colorimetry matrix(Curve[] curves, Matrix3 toSrgb) {
        return type -> new MatrixDecoder(
                new float[][] {curves[0].table(type), curves[1].table(type), curves[2].table(type)}, toSrgb);
    }
}
