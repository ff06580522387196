package org.adumbrate.raster.encode;

/** Replaces each sample of a row by its difference to the same channel's sample before it, modulo its range, in place. */
final class Differences {
    private Differences() {}

    /** Bytes, {@code step} channels interleaved. */
    static void ofBytes(byte[] row, int at, int length, int step) {
        for (int k = at + length - 1; k >= at + step; k--) {
            row[k] -= row[k - step];
        }
    }

    /** Two bytes a sample, big end first. */
    static void ofShorts(byte[] row, int at, int length, int step) {
        for (int k = at + length - 2; k >= at + 2 * step; k -= 2) {
            int here = (row[k] << 8) + (row[k + 1] & 0xff);
            int before = (row[k - 2 * step] << 8) + (row[k - 2 * step + 1] & 0xff);
            int difference = here - before;
            row[k] = (byte) (difference >>> 8);
            row[k + 1] = (byte) difference;
        }
    }
}
