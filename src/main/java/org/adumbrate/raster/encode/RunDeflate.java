package org.adumbrate.raster.encode;

/**
 * Deflates (RFC 1951) by runs alone: a byte that repeats is a match at distance 1, everything else is a literal, and every
 * block has a prefix code of its own. The rows of a render, once differences have been taken, are small noise and long
 * runs of zero: there is hardly anything else to match, and looking for it is what makes deflating slow.
 */
final class RunDeflate {
    private static final int BLOCK = 1 << 16;
    private static final int LITERALS = 256;
    private static final int END = 256;
    private static final int SYMBOLS = 286;
    private static final int SHORTEST = 3;
    private static final int LONGEST = 258;
    private static final int LONGEST_CODE = 15;
    private static final int BFINAL = 1;
    private static final int DYNAMIC = 2;

    /** For each length of a run: its symbol, its extra bits and how many (RFC 1951, 3.2.5). */
    private static final int[] SYMBOL = new int[LONGEST + 1];

    private static final int[] EXTRA = new int[LONGEST + 1];
    private static final int[] EXTRA_BITS = new int[LONGEST + 1];

    static {
        int symbol = 257;
        for (int length = SHORTEST; length < LONGEST; symbol++) {
            int bits = symbol < 265 ? 0 : (symbol - 261) / 4;
            for (int k = 0; k < 1 << bits && length < LONGEST; k++, length++) {
                SYMBOL[length] = symbol;
                EXTRA[length] = k;
                EXTRA_BITS[length] = bits;
            }
        }
        SYMBOL[LONGEST] = 285;
    }

    private final BitWriter out = new BitWriter();
    private final char[] tokens = new char[BLOCK];
    private final int[] codes = new int[LITERALS + LONGEST + 1];
    private final byte[] bits = new byte[LITERALS + LONGEST + 1];
    private int tokenCount;

    /**
     * Compresses a run of bytes.
     *
     * @param last true if it ends its stream; otherwise it ends at a byte's edge and others may follow
     */
    byte[] compress(byte[] data, int length, boolean last) {
        out.reset();
        for (int from = 0; from < length || from == 0; from += BLOCK) {
            int to = Math.min(length, from + BLOCK);
            block(data, from, to, last && to == length);
        }
        if (!last) {
            out.reserve(64);
            out.put(0, 3);
            out.align();
            out.put(0xffff0000, 32);
        }
        out.align();
        return out.bytes();
    }

    private void block(byte[] data, int from, int to, boolean last) {
        int[] frequencies = tokenize(data, from, to);
        PrefixCode code = PrefixCode.of(frequencies, LONGEST_CODE);
        out.reserve(8192 + (long) tokenCount * (LONGEST_CODE + 6));
        out.put((last ? BFINAL : 0) | DYNAMIC << 1, 3);
        BlockHeader.write(code, out);
        prepare(code);
        for (int k = 0; k < tokenCount; k++) {
            int token = tokens[k];
            out.put(codes[token], bits[token]);
        }
        out.put(code.code(END), code.length(END));
    }

    /** Splits data into literals 0 to 255 and runs, 256 + length; counts the symbols. */
    private int[] tokenize(byte[] data, int from, int to) {
        int[] frequencies = new int[SYMBOLS];
        frequencies[END] = 1;
        int count = 0;
        int at = from;
        while (at < to) {
            byte value = data[at++];
            tokens[count++] = (char) (value & 0xff);
            frequencies[value & 0xff]++;
            int end = at;
            while (end < to && data[end] == value) {
                end++;
            }
            while (end - at >= SHORTEST) {
                int run = Math.min(LONGEST, end - at);
                tokens[count++] = (char) (LITERALS + run);
                frequencies[SYMBOL[run]]++;
                at += run;
            }
        }
        tokenCount = count;
        return frequencies;
    }

    /** Lays out the bits of each token: code, extra bits, and the one bit that says distance 1. */
    private void prepare(PrefixCode code) {
        for (int k = 0; k < LITERALS; k++) {
            codes[k] = code.code(k);
            bits[k] = (byte) code.length(k);
        }
        for (int run = SHORTEST; run <= LONGEST; run++) {
            int length = code.length(SYMBOL[run]);
            codes[LITERALS + run] = code.code(SYMBOL[run]) | EXTRA[run] << length;
            bits[LITERALS + run] = (byte) (length + EXTRA_BITS[run] + 1);
        }
    }
}
