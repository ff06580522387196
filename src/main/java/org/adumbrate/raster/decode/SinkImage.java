package org.adumbrate.raster.decode;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.PixelInterleavedSampleModel;
import java.util.stream.IntStream;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.SampleType;

/** Pictures without memory, to be given to a library as the destination of its reading. */
final class SinkImage {
    private SinkImage() {}

    /** A picture that looks, to the library, as if it held such pixels; its colour space is a name only. */
    static BufferedImage of(
            PixelSize size, ColourModel colour, Alpha alpha, SampleType type, SinkRaster.PieceSink sink) {
        int channels = colour.channels() + alpha.channels();
        int dataType = dataType(type);
        PixelInterleavedSampleModel samples = new PixelInterleavedSampleModel(
                dataType,
                size.width(),
                size.height(),
                channels,
                size.width() * channels,
                IntStream.range(0, channels).toArray());
        ComponentColorModel model = new ComponentColorModel(
                colourSpace(colour),
                alpha != Alpha.NONE,
                false,
                alpha == Alpha.NONE ? Transparency.OPAQUE : Transparency.TRANSLUCENT,
                dataType);
        return new BufferedImage(model, new SinkRaster(samples, sink), false, null);
    }

    private static int dataType(SampleType type) {
        return switch (type) {
            case BYTE -> DataBuffer.TYPE_BYTE;
            case SHORT -> DataBuffer.TYPE_USHORT;
            case FLOAT -> DataBuffer.TYPE_FLOAT;
        };
    }

    private static ColorSpace colourSpace(ColourModel colour) {
        return switch (colour) {
            case GREY -> ColorSpace.getInstance(ColorSpace.CS_GRAY);
            case RGB -> ColorSpace.getInstance(ColorSpace.CS_sRGB);
            case CMYK -> new InkSpace();
        };
    }

    /** A name for four inks; no colour is ever converted through it. */
    private static final class InkSpace extends ColorSpace {
        private static final long serialVersionUID = 1L;

        InkSpace() {
            super(TYPE_CMYK, 4);
        }

        @Override
        public float[] toRGB(float[] inks) {
            throw new UnsupportedOperationException();
        }

        @Override
        public float[] fromRGB(float[] rgb) {
            throw new UnsupportedOperationException();
        }

        @Override
        public float[] toCIEXYZ(float[] inks) {
            throw new UnsupportedOperationException();
        }

        @Override
        public float[] fromCIEXYZ(float[] xyz) {
            throw new UnsupportedOperationException();
        }
    }
}
