package org.adumbrate.raster.encode;

import java.util.Arrays;

/**
 * A prefix code in the canonical form of RFC 1951 section 3.2.2, with the lengths of Huffman's method (Proc. IRE 40(9),
 * 1952) kept below a limit.
 */
final class PrefixCode {
    private final int[] lengths;
    private final int[] codes;

    private PrefixCode(int[] lengths) {
        this.lengths = lengths;
        this.codes = canonical(lengths);
    }

    /**
     * The code for symbols of given frequencies. Where Huffman's lengths exceed the limit, the frequencies are evened out
     * until they do not: this costs a little where a symbol is rarer than one in 2^limit.
     */
    static PrefixCode of(int[] frequencies, int limit) {
        int[] counts = frequencies.clone();
        int[] lengths = huffman(counts);
        while (Arrays.stream(lengths).max().orElse(0) > limit) {
            for (int k = 0; k < counts.length; k++) {
                counts[k] = counts[k] == 0 ? 0 : counts[k] / 2 + 1;
            }
            lengths = huffman(counts);
        }
        return new PrefixCode(lengths);
    }

    /** Bits of a symbol's code; 0 for one that does not occur. */
    int length(int symbol) {
        return lengths[symbol];
    }

    /** A symbol's code, ready to be written lowest bit first. */
    int code(int symbol) {
        return codes[symbol];
    }

    /** The last symbol that occurs. */
    int last() {
        int last = lengths.length - 1;
        while (last > 0 && lengths[last] == 0) {
            last--;
        }
        return last;
    }

    /** Joins the two rarest again and again: leaves sorted by count and trees in the order made are two queues. */
    private static int[] huffman(int[] counts) {
        long[] leaves = new long[counts.length];
        int leafCount = 0;
        for (int k = 0; k < counts.length; k++) {
            if (counts[k] > 0) {
                leaves[leafCount++] = (long) counts[k] << 16 | k;
            }
        }
        int[] lengths = new int[counts.length];
        if (leafCount <= 1) {
            for (int k = 0; k < leafCount; k++) {
                lengths[(int) leaves[k] & 0xffff] = 1;
            }
            return lengths;
        }
        Arrays.sort(leaves, 0, leafCount);
        int nodes = 2 * leafCount - 1;
        long[] weight = new long[nodes];
        int[] parent = new int[nodes];
        for (int k = 0; k < leafCount; k++) {
            weight[k] = leaves[k] >>> 16;
        }
        int leaf = 0;
        int tree = leafCount;
        for (int made = leafCount; made < nodes; made++) {
            for (int side = 0; side < 2; side++) {
                boolean takesLeaf = leaf < leafCount && (tree >= made || weight[leaf] <= weight[tree]);
                int rarest = takesLeaf ? leaf++ : tree++;
                parent[rarest] = made;
                weight[made] += weight[rarest];
            }
        }
        int[] depth = new int[nodes];
        for (int k = nodes - 2; k >= 0; k--) {
            depth[k] = depth[parent[k]] + 1;
            if (k < leafCount) {
                lengths[(int) leaves[k] & 0xffff] = depth[k];
            }
        }
        return lengths;
    }

    private static int[] canonical(int[] lengths) {
        int[] codes = new int[lengths.length];
        int code = 0;
        for (int length = 1; length <= 15; length++) {
            code <<= 1;
            for (int k = 0; k < lengths.length; k++) {
                if (lengths[k] == length) {
                    codes[k] = Integer.reverse(code++) >>> (32 - length);
                }
            }
        }
        return codes;
    }
}
