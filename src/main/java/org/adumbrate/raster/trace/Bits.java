package org.adumbrate.raster.trace;

import org.adumbrate.geometry.PixelSize;

/** One bit a pixel, none set outside the raster. */
final class Bits {
    private final int width;
    private final int height;
    private final int wordsPerRow;
    private final long[] words;

    Bits(PixelSize size) {
        width = size.width();
        height = size.height();
        wordsPerRow = (width + Long.SIZE - 1) / Long.SIZE;
        words = new long[Math.multiplyExact(wordsPerRow, height)];
    }

    /** The pixels of a mask. */
    static Bits of(PixelMask mask, PixelSize size) {
        Bits bits = new Bits(size);
        for (int y = 0; y < bits.height; y++) {
            for (int x = 0; x < bits.width; x++) {
                if (mask.covers(x, y)) {
                    bits.set(x, y);
                }
            }
        }
        return bits;
    }

    boolean at(int x, int y) {
        return x >= 0
                && y >= 0
                && x < width
                && y < height
                && ((words[y * wordsPerRow + x / Long.SIZE] >>> (x % Long.SIZE)) & 1) != 0;
    }

    void set(int x, int y) {
        words[y * wordsPerRow + x / Long.SIZE] |= 1L << (x % Long.SIZE);
    }

    /** The next set pixel of a row from a column on that is not set in the row above; the width if there is none. */
    int nextTop(int from, int y) {
        int x = from;
        while (x < width) {
            int word = x / Long.SIZE;
            long tops = words[y * wordsPerRow + word] & ~(y > 0 ? words[(y - 1) * wordsPerRow + word] : 0);
            tops &= -1L << (x % Long.SIZE);
            if (tops != 0) {
                return word * Long.SIZE + Long.numberOfTrailingZeros(tops);
            }
            x = (word + 1) * Long.SIZE;
        }
        return width;
    }
}
