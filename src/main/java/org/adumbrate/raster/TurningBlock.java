package org.adumbrate.raster;

import org.adumbrate.geometry.PixelSize;

/**
 * Turns a raster on its way into a store. Pieces that lie below each other are gathered, so that where columns become rows
 * the store gets runs and not pixels; a later piece still replaces an earlier one.
 */
final class TurningBlock {
    /** Memory for what is gathered, in bytes. */
    private static final int ROOM = 1 << 24;

    private final RowStore store;
    private final Orientation orientation;
    private final PixelSize seen;
    private final int channels;
    private final SampleType type;
    private Samples block;
    private Samples run;
    private int left;
    private int top;
    private int width;
    private int rows;
    private int mostRows;

    /**
     * Holds nothing yet.
     *
     * @param store takes the raster as seen
     * @param seen its size as seen
     */
    TurningBlock(RowStore store, Orientation orientation, PixelSize seen, int channels, SampleType type) {
        this.store = store;
        this.orientation = orientation;
        this.seen = seen;
        this.channels = channels;
        this.type = type;
        this.block = Samples.allocate(type, 0);
        this.run = block;
    }

    /** Takes a piece of a row as stored. */
    void put(int x, int y, int pixels, Samples samples, int offset) {
        boolean below = x == left && pixels == width && y == top + rows && rows < mostRows;
        if (!below) {
            flush();
            begin(x, y, pixels);
        }
        block.copyFrom(rows * width * channels, samples, offset, pixels * channels);
        rows++;
    }

    private void begin(int x, int y, int pixels) {
        left = x;
        top = y;
        width = pixels;
        int storedHeight = orientation.transposes() ? seen.width() : seen.height();
        int rowSamples = pixels * channels;
        mostRows = Math.max(1, Math.min(storedHeight - y, ROOM / (rowSamples * type.bytes())));
        block = roomy(block, mostRows * rowSamples);
        run = roomy(run, Math.max(pixels, mostRows) * channels);
    }

    private Samples roomy(Samples room, int count) {
        return room.length() < count ? Samples.allocate(type, count) : room;
    }

    /** Stores what is gathered. */
    void flush() {
        int lines = orientation.transposes() ? width : rows;
        int length = orientation.transposes() ? rows : width;
        for (int line = 0; rows > 0 && line < lines; line++) {
            storeLine(line, length);
        }
        rows = 0;
    }

    /** Stores what becomes a piece of one row as seen: a column of what is gathered, or a row. */
    private void storeLine(int line, int length) {
        boolean transposes = orientation.transposes();
        int startX = left + (transposes ? line : 0);
        int startY = top + (transposes ? 0 : line);
        int endX = transposes ? startX : left + length - 1;
        int endY = transposes ? top + length - 1 : startY;
        int first = orientation.seenX(startX, startY, seen);
        int last = orientation.seenX(endX, endY, seen);
        int step = (transposes ? width : 1) * channels;
        int from = ((startY - top) * width + startX - left) * channels;
        for (int k = 0; k < length; k++, from += step) {
            int to = first <= last ? k : length - 1 - k;
            run.copyFrom(to * channels, block, from, channels);
        }
        store.put(Math.min(first, last), orientation.seenY(startX, startY, seen), length, run, 0);
    }
}
