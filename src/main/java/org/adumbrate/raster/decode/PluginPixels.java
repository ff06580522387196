package org.adumbrate.raster.decode;

import java.awt.image.ColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.util.function.Supplier;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.Samples;

/**
 * How pixels become samples that a library describes by its own colour model.
 *
 * @param layout of a pixel as delivered
 * @param samples makes a converter of pieces
 */
record PluginPixels(PixelLayout layout, Supplier<PieceSamples> samples) {
    static PluginPixels of(ColorModel model) {
        if (model instanceof IndexColorModel palette) {
            return palette(palette);
        }
        Alpha alpha = model.hasAlpha() ? Alpha.STRAIGHT : Alpha.NONE;
        ColourModel colour = model.getNumColorComponents() == 1 ? ColourModel.GREY : ColourModel.RGB;
        int channels = colour.channels() + alpha.channels();
        if (model.getTransferType() == DataBuffer.TYPE_FLOAT) {
            return new PluginPixels(
                    new PixelLayout(colour, alpha, SampleType.FLOAT), () -> new RealSamples(channels, false, false));
        }
        boolean wide = model.getComponentSize(0) > 8;
        PixelLayout layout = new PixelLayout(colour, alpha, wide ? SampleType.SHORT : SampleType.BYTE);
        long[] most = new long[channels];
        for (int c = 0; c < channels; c++) {
            most[c] = (1L << model.getComponentSize(c)) - 1;
        }
        return new PluginPixels(layout, () -> new WholeSamples(layout.type(), most, false));
    }

    private static PluginPixels palette(IndexColorModel palette) {
        int count = palette.getMapSize();
        boolean grey = true;
        for (int i = 0; i < count; i++) {
            grey &= palette.getRed(i) == palette.getGreen(i) && palette.getRed(i) == palette.getBlue(i);
        }
        PixelLayout layout = new PixelLayout(grey ? ColourModel.GREY : ColourModel.RGB, Alpha.NONE, SampleType.BYTE);
        byte[] entries = new byte[count * layout.channels()];
        for (int i = 0; i < entries.length; i++) {
            int shift = 16 - 8 * (i % layout.channels());
            entries[i] = (byte) (palette.getRGB(i / layout.channels()) >> shift);
        }
        Samples shared = new Samples.Bytes(entries);
        return new PluginPixels(layout, () -> new PaletteSamples(layout, shared, count));
    }
}
