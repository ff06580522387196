package org.adumbrate.raster.decode.bmp;

import java.io.IOException;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.Samples;
import org.adumbrate.raster.decode.light.Alpha;
import org.adumbrate.raster.decode.light.ColourModel;
import org.adumbrate.raster.decode.light.PixelLayout;
import org.adumbrate.raster.decode.source.SourceFile;

/** Turns the bytes of a BMP's row into samples: entries of its palette, or colours cut out by masks. */
final class BmpPixels {
    private static final int OPAQUE = 255;

    private final SourceFile file;
    private final BmpHead head;
    private final PixelLayout layout;
    private final Samples samples;

    BmpPixels(SourceFile file, BmpHead head) {
        this.file = file;
        this.head = head;
        this.layout = head.bits() <= 8 ? ofPalette(head.palette()) : ofMasks(head);
        this.samples = Samples.allocate(layout.type(), head.size().width() * layout.channels());
    }

    private static PixelLayout ofPalette(byte[] palette) {
        boolean grey = true;
        for (int i = 0; i < palette.length; i += 3) {
            grey &= palette[i] == palette[i + 1] && palette[i] == palette[i + 2];
        }
        return new PixelLayout(grey ? ColourModel.GREY : ColourModel.RGB, Alpha.NONE, SampleType.BYTE);
    }

    private static PixelLayout ofMasks(BmpHead head) {
        boolean wide = false;
        for (int mask : head.masks()) {
            wide |= Integer.bitCount(mask) > 8;
        }
        Alpha alpha = head.masks()[3] == 0 ? Alpha.NONE : Alpha.STRAIGHT;
        return new PixelLayout(ColourModel.RGB, alpha, wide ? SampleType.SHORT : SampleType.BYTE);
    }

    /** Of a pixel as delivered. */
    PixelLayout layout() {
        return layout;
    }

    /**
     * The samples of a row.
     *
     * @param row its bytes
     * @param number what to call it in a fault
     */
    Samples unpack(byte[] row, int number) throws IOException {
        if (head.bits() <= 8) {
            entries(row, number, ((Samples.Bytes) samples).values());
        } else if (head.bits() == 24) {
            reversed(row, ((Samples.Bytes) samples).values());
        } else {
            masked(row);
        }
        return samples;
    }

    private void entries(byte[] row, int number, byte[] to) throws IOException {
        byte[] palette = head.palette();
        int bits = head.bits();
        int channels = layout.channels();
        for (int x = 0; x < head.size().width(); x++) {
            int place = x * bits;
            int code = row[place >> 3] >> (8 - bits - (place & 7)) & ((1 << bits) - 1);
            if (3 * code >= palette.length) {
                throw file.damaged(
                        "its row " + number + " names entry " + code + " of a palette of " + palette.length / 3);
            }
            System.arraycopy(palette, 3 * code, to, x * channels, channels);
        }
    }

    private void reversed(byte[] row, byte[] to) {
        for (int i = 0; i < 3 * head.size().width(); i += 3) {
            to[i] = row[i + 2];
            to[i + 1] = row[i + 1];
            to[i + 2] = row[i];
        }
    }

    private void masked(byte[] row) {
        int bytes = head.bits() / 8;
        int channels = layout.channels();
        for (int x = 0; x < head.size().width(); x++) {
            int pixel = 0;
            for (int b = 0; b < bytes; b++) {
                pixel |= (row[x * bytes + b] & 0xff) << (8 * b);
            }
            for (int c = 0; c < channels; c++) {
                int mask = head.masks()[c];
                long most = Math.max(1, (1L << Integer.bitCount(mask)) - 1);
                long code = ((pixel & mask) & 0xffffffffL) >>> Integer.numberOfTrailingZeros(mask);
                if (samples instanceof Samples.Bytes run) {
                    run.values()[x * channels + c] = (byte) ((2 * code * OPAQUE + most) / (2 * most));
                } else {
                    ((Samples.Shorts) samples).values()[x * channels + c] =
                            (short) ((2 * code * 65535 + most) / (2 * most));
                }
            }
        }
    }
}
