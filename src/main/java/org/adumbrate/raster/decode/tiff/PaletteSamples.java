package org.adumbrate.raster.decode.tiff;

import java.awt.image.Raster;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.Samples;
import org.adumbrate.raster.decode.light.PixelLayout;

/** Numbers of palette entries; of one channel if the palette holds greys only. */
final class PaletteSamples implements PieceSamples {
    private final PixelLayout layout;
    private final Samples entries;
    private final int count;
    private int[] codes = {};
    private Samples room;

    /**
     * @param layout of an entry
     * @param entries the entries' samples
     * @param count how many entries there are
     */
    PaletteSamples(PixelLayout layout, Samples entries, int count) {
        this.layout = layout;
        this.entries = entries;
        this.count = count;
        this.room = Samples.allocate(layout.type(), 0);
    }

    @Override
    public void put(Raster piece, int x, int y, SampleSink sink) {
        int width = piece.getWidth();
        int channels = layout.channels();
        if (codes.length < width) {
            codes = new int[width];
            room = Samples.allocate(layout.type(), width * channels);
        }
        for (int row = 0; row < piece.getHeight(); row++) {
            piece.getSamples(piece.getMinX(), piece.getMinY() + row, width, 1, 0, codes);
            for (int i = 0; i < width; i++) {
                if (codes[i] >= count) {
                    throw new IndexOutOfBoundsException("entry " + codes[i] + " of a palette of " + count);
                }
                room.copyFrom(i * channels, entries, codes[i] * channels, channels);
            }
            sink.put(x, y + row, width, room, 0);
        }
    }
}
