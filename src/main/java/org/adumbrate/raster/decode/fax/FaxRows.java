package org.adumbrate.raster.decode.fax;

import java.io.IOException;
import java.util.Arrays;

/**
 * Unpacks rows of a facsimile: modified Huffman (TIFF 6.0, section 10), ITU-T T.4 in one and two dimensions, ITU-T T.6. A row
 * is known by the places where its colour changes, the first to black. One that does not add up to its width is damaged: what
 * its sender meant cannot be known, and in two dimensions all below it hang on it.
 */
public final class FaxRows {
    private static final int END_OF_LINE_ZEROS = 11;
    private static final int LONGEST_MODE = 7;

    private final FaxScheme scheme;
    private final int width;
    private FaxBits bits;
    private int[] above;
    private int[] changes;
    private int count;
    private int countAbove;
    private boolean lastTag;
    private boolean first;

    /**
     * Unpacks rows of one width.
     *
     * @param scheme how rows are written
     * @param width of a row, in pixels
     */
    public FaxRows(FaxScheme scheme, int width) {
        this.scheme = scheme;
        this.width = width;
        this.above = new int[width + 2];
        this.changes = new int[width + 2];
    }

    /** Begins a strip or tile: the row above its first is white. */
    public void begin(FaxBits strip) {
        bits = strip;
        count = 0;
        first = true;
    }

    /** A row that cannot be unpacked. */
    public static final class DamagedRow extends IOException {
        private static final long serialVersionUID = 1L;

        /** @param why what is wrong with it, in words */
        public DamagedRow(String why) {
            super(why);
        }
    }

    /**
     * Unpacks the next row: a bit for each pixel, 0 where the sender's paper was white.
     *
     * @throws DamagedRow if it makes no sense, or there is none
     */
    public void next(byte[] packed) throws IOException {
        int[] swapped = above;
        above = changes;
        countAbove = count;
        changes = swapped;
        count = 0;
        boolean twoDimensions = scheme == FaxScheme.T6;
        if (scheme == FaxScheme.HUFFMAN) {
            bits.alignToByte();
        } else if (scheme != FaxScheme.T6) {
            boolean marked = passEndsOfLine();
            if (!marked && (scheme == FaxScheme.T4_TWO || !first)) {
                // In one dimension some writers leave out the first.
                throw new DamagedRow("no end of line stands before it");
            }
            twoDimensions = scheme == FaxScheme.T4_TWO && !lastTag;
        }
        first = false;
        if (bits.isAtEnd()) {
            throw new DamagedRow("there are no more");
        }
        if (twoDimensions) {
            readTwo();
        } else {
            readOne();
        }
        if (bits.isOver()) {
            throw new DamagedRow("it ends early");
        }
        paint(packed);
    }

    /** Passes over marks of the end of a line, with what is filled in before them; each has a tag in two dimensions. */
    private boolean passEndsOfLine() throws IOException {
        boolean found = false;
        while (!bits.isAtEnd() && bits.peek(END_OF_LINE_ZEROS) == 0) {
            while (bits.peek(1) == 0 && !bits.isAtEnd()) {
                bits.skip(1);
            }
            bits.skip(1);
            if (scheme == FaxScheme.T4_TWO) {
                lastTag = bits.peek(1) == 1;
                bits.skip(1);
            }
            found = true;
        }
        return found;
    }

    private void readOne() throws IOException {
        boolean black = false;
        int at = 0;
        while (at < width) {
            at = change(at, run(black));
            black = !black;
        }
    }

    private int run(boolean black) throws IOException {
        int run = (black ? FaxCodes.BLACK : FaxCodes.WHITE).run(bits);
        if (run < 0) {
            throw new DamagedRow("a run has no length");
        }
        return run;
    }

    private int change(int from, int by) throws DamagedRow {
        int to = from + by;
        if (by < 0 || to > width) {
            throw new DamagedRow("it leads out of its width");
        }
        // A run of nothing changes nothing: its two changes cancel out.
        if (count > 0 && changes[count - 1] == to) {
            count--;
        } else if (to < width) {
            changes[count++] = to;
        }
        return to;
    }

    /** The letters are those of T.4, 4.2.1: a0 is where the row has got to, b1 and b2 are changes in the row above. */
    private void readTwo() throws IOException {
        boolean black = false;
        int a0 = -1;
        int k = 0;
        while (a0 < width) {
            while (k > 0 && above(k - 1) > a0) {
                k--;
            }
            while (k < countAbove && (above(k) <= a0 || (k % 2 == 1) != black)) {
                k++;
            }
            int b1 = above(k);
            int mode = bits.peek(LONGEST_MODE);
            if (mode >> 3 == 1) {
                bits.skip(4);
                a0 = above(k + 1);
            } else if (mode >> 4 == 1) {
                bits.skip(3);
                int a1 = change(Math.max(0, a0), run(black));
                a0 = change(a1, run(!black));
            } else {
                int start = Math.max(0, a0);
                a0 = change(start, b1 + vertical(mode) - start);
                black = !black;
            }
        }
    }

    private int above(int k) {
        return k < countAbove ? above[k] : width;
    }

    /** How far a change lies from that above. */
    private int vertical(int mode) throws IOException {
        if (mode >> 6 == 1) {
            bits.skip(1);
            return 0;
        }
        for (int far = 1; far <= 3; far++) {
            int length = far == 1 ? 3 : far + 4;
            int right = mode >> (LONGEST_MODE - length);
            if (right == 3 || right == 2) {
                bits.skip(length);
                return right == 3 ? far : -far;
            }
        }
        throw new DamagedRow("it holds no code that is known");
    }

    private void paint(byte[] packed) {
        Arrays.fill(packed, (byte) 0);
        for (int k = 0; k < count; k += 2) {
            int end = k + 1 < count ? changes[k + 1] : width;
            for (int x = changes[k]; x < end; ) {
                if (x % 8 == 0 && end - x >= 8) {
                    packed[x >> 3] = -1;
                    x += 8;
                } else {
                    packed[x >> 3] |= (byte) (0x80 >> (x & 7));
                    x++;
                }
            }
        }
    }
}
