package org.adumbrate.raster.decode.library;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.SampleModel;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.decode.light.ColourModel;

/** A picture without memory, to be given to a library as the destination of its reading. */
public final class SinkImage extends BufferedImage {
    private SinkImage(ColorModel colours, SampleModel samples, SinkRaster.PieceSink sink) {
        super(colours, new SinkRaster(samples, sink), colours.isAlphaPremultiplied(), null);
    }

    /** Shaped as the library itself would have it. */
    public static SinkImage of(ColorModel colours, SampleModel samples, SinkRaster.PieceSink sink) {
        return new SinkImage(colours, samples, sink);
    }

    /** A picture that looks, to the library, as if it held opaque 8-bit pixels; its colour space is a name only. */
    public static SinkImage ofBytes(PixelSize size, ColourModel colour, SinkRaster.PieceSink sink) {
        ColorModel model = new ComponentColorModel(colourSpace(colour), false, false, OPAQUE, DataBuffer.TYPE_BYTE);
        return new SinkImage(model, model.createCompatibleSampleModel(size.width(), size.height()), sink);
    }

    /** The raster itself: there is nothing to copy. */
    @Override
    public Raster getData() {
        return getRaster();
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
