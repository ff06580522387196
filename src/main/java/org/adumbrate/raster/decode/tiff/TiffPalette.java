package org.adumbrate.raster.decode.tiff;

import java.io.IOException;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.Samples;
import org.adumbrate.raster.decode.light.Alpha;
import org.adumbrate.raster.decode.light.ColourModel;
import org.adumbrate.raster.decode.light.PixelLayout;
import org.adumbrate.raster.decode.metadata.TiffFields;
import org.adumbrate.raster.decode.metadata.TiffTag;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * The ColorMap of a TIFF: all reds, then all greens, then all blues, 16 bits each (TIFF 6.0, section 5).
 *
 * @param layout of an entry: one channel if all are grey, 8 bits if those say it all
 * @param entries their samples, interleaved
 * @param count how many
 */
record TiffPalette(PixelLayout layout, Samples entries, int count) {
    static TiffPalette read(SourceFile file, TiffFields fields, int bits) throws IOException {
        long[] map = fields.numbers(TiffTag.COLOR_MAP);
        int count = map.length / 3;
        if (count < 1 << bits) {
            throw file.damaged("its palette has " + count + " of " + (1 << bits) + " entries");
        }
        // Some writers state 8-bit colours in the lower half of each number.
        boolean lowerHalf = largest(map) <= 0xff;
        boolean narrow = lowerHalf || allWithin8Bits(map);
        boolean grey = isGrey(map, count);
        PixelLayout layout = new PixelLayout(
                grey ? ColourModel.GREY : ColourModel.RGB, Alpha.NONE, narrow ? SampleType.BYTE : SampleType.SHORT);
        int channels = layout.channels();
        Samples entries = Samples.allocate(layout.type(), count * channels);
        for (int i = 0; i < count * channels; i++) {
            int value = (int) map[i / channels + i % channels * count];
            if (entries instanceof Samples.Bytes bytes) {
                bytes.values()[i] = (byte) (lowerHalf ? value : value >> 8);
            } else {
                ((Samples.Shorts) entries).values()[i] = (short) value;
            }
        }
        return new TiffPalette(layout, entries, count);
    }

    private static long largest(long[] map) {
        long largest = 0;
        for (long value : map) {
            largest = Math.max(largest, value);
        }
        return largest;
    }

    private static boolean allWithin8Bits(long[] map) {
        for (long value : map) {
            if (value % 257 != 0 && value % 256 != 0) {
                return false;
            }
        }
        return true;
    }

    private static boolean isGrey(long[] map, int count) {
        for (int i = 0; i < count; i++) {
            if (map[i] != map[i + count] || map[i] != map[i + 2 * count]) {
                return false;
            }
        }
        return true;
    }
}
