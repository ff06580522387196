package org.adumbrate.raster.decode.png;

/**
 * Undoes the filters of PNG rows (ISO/IEC 15948, clause 9). A row stands in an array from index 1; index 0 holds its
 * filter's number. The row above is all zero for the first row.
 */
final class PngFilter {
    private PngFilter() {}

    /**
     * Undoes the filter of one row in place.
     *
     * @param row the row
     * @param above the row above, already undone
     * @param length bytes of the row, without the filter's number
     * @param step distance to the byte of the pixel before
     * @return false if the row names a filter that there is not
     */
    static boolean undo(byte[] row, byte[] above, int length, int step) {
        switch (row[0]) {
            case 0 -> {
                // None.
            }
            case 1 -> sub(row, length, step);
            case 2 -> up(row, above, length);
            case 3 -> average(row, above, length, step);
            case 4 -> paeth(row, above, length, step);
            default -> {
                return false;
            }
        }
        return true;
    }

    private static void sub(byte[] row, int length, int step) {
        for (int i = step + 1; i <= length; i++) {
            row[i] += row[i - step];
        }
    }

    private static void up(byte[] row, byte[] above, int length) {
        for (int i = 1; i <= length; i++) {
            row[i] += above[i];
        }
    }

    private static void average(byte[] row, byte[] above, int length, int step) {
        for (int i = 1; i <= Math.min(step, length); i++) {
            row[i] += (byte) ((above[i] & 0xff) >> 1);
        }
        for (int i = step + 1; i <= length; i++) {
            row[i] += (byte) (((row[i - step] & 0xff) + (above[i] & 0xff)) >> 1);
        }
    }

    private static void paeth(byte[] row, byte[] above, int length, int step) {
        for (int i = 1; i <= Math.min(step, length); i++) {
            row[i] += above[i];
        }
        if (step == 1) {
            paethOfBytes(row, above, length);
            return;
        }
        for (int i = step + 1; i <= length; i++) {
            row[i] += (byte) predict(row[i - step] & 0xff, above[i] & 0xff, above[i - step] & 0xff);
        }
    }

    /** With the neighbours in registers: each byte waits for the one before, so that nothing else may be slow. */
    private static void paethOfBytes(byte[] row, byte[] above, int length) {
        int a = row[1] & 0xff;
        int c = above[1] & 0xff;
        for (int i = 2; i <= length; i++) {
            int b = above[i] & 0xff;
            a = row[i] + predict(a, b, c) & 0xff;
            row[i] = (byte) a;
            c = b;
        }
    }

    /** The standard's letters: a is left, b above, c above left. */
    private static int predict(int a, int b, int c) {
        int pa = Math.abs(b - c);
        int pb = Math.abs(a - c);
        int pc = Math.abs(a + b - 2 * c);
        int nearer = pb <= pc ? b : c;
        return pa <= pb && pa <= pc ? a : nearer;
    }
}
