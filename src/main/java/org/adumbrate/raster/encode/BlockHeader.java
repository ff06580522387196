package org.adumbrate.raster.encode;

/** Writes the head of a deflate block with a code of its own (RFC 1951, 3.2.7). */
final class BlockHeader {
    private static final int[] ORDER = {16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15};
    private static final int ZEROS_FEW = 17;
    private static final int ZEROS_MANY = 18;
    private static final int LONGEST_CODE = 7;

    private BlockHeader() {}

    /** Writes the lengths of the literal and run symbols, and a distance code of one symbol: distance 1 in one bit. */
    static void write(PrefixCode code, BitWriter out) {
        int symbols = Math.max(257, code.last() + 1);
        int[] lengths = new int[symbols + 1];
        for (int k = 0; k < symbols; k++) {
            lengths[k] = code.length(k);
        }
        lengths[symbols] = 1;
        int[] tokens = new int[lengths.length];
        int[] extras = new int[lengths.length];
        int[] frequencies = new int[19];
        int count = tokenize(lengths, tokens, extras, frequencies);
        PrefixCode lengthCode = PrefixCode.of(frequencies, LONGEST_CODE);
        int shown = ORDER.length;
        while (shown > 4 && lengthCode.length(ORDER[shown - 1]) == 0) {
            shown--;
        }
        out.put(symbols - 257, 5);
        out.put(0, 5);
        out.put(shown - 4, 4);
        for (int k = 0; k < shown; k++) {
            out.put(lengthCode.length(ORDER[k]), 3);
        }
        for (int k = 0; k < count; k++) {
            out.put(lengthCode.code(tokens[k]), lengthCode.length(tokens[k]));
            if (tokens[k] >= ZEROS_FEW) {
                out.put(extras[k], tokens[k] == ZEROS_FEW ? 3 : 7);
            }
        }
    }

    /** Runs of 3 to 10 zeros are symbol 17, of 11 to 138 symbol 18; any other length stands for itself. */
    private static int tokenize(int[] lengths, int[] tokens, int[] extras, int[] frequencies) {
        int count = 0;
        int k = 0;
        while (k < lengths.length) {
            int zeros = 0;
            while (k + zeros < lengths.length && lengths[k + zeros] == 0 && zeros < 138) {
                zeros++;
            }
            if (zeros >= 3) {
                tokens[count] = zeros <= 10 ? ZEROS_FEW : ZEROS_MANY;
                extras[count] = zeros - (zeros <= 10 ? 3 : 11);
                k += zeros;
            } else {
                tokens[count] = lengths[k++];
            }
            frequencies[tokens[count++]]++;
        }
        return count;
    }
}
