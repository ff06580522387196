package org.adumbrate.raster.encode;

/** Each sample of a row less the same channel's sample before it, modulo its range; the first pixel as it is. */
final class Differences {
    private Differences() {}

    /** Bytes, {@code step} channels interleaved. */
    static void ofBytes(byte[] row, int step, byte[] out, int at) {
        System.arraycopy(row, 0, out, at, step);
        for (int k = step; k < row.length; k++) {
            out[at + k] = (byte) (row[k] - row[k - step]);
        }
    }

    /** Two bytes a sample, big end first. */
    static void ofShorts(byte[] row, int step, byte[] out, int at) {
        System.arraycopy(row, 0, out, at, 2 * step);
        for (int k = 2 * step; k < row.length; k += 2) {
            int here = (row[k] << 8) + (row[k + 1] & 0xff);
            int before = (row[k - 2 * step] << 8) + (row[k - 2 * step + 1] & 0xff);
            int difference = here - before;
            out[at + k] = (byte) (difference >>> 8);
            out[at + k + 1] = (byte) difference;
        }
    }
}
