package org.adumbrate.raster;

import java.io.IOException;
import java.util.Arrays;

/** The rows of a raster that were read last, a few of them, in light: a row that is asked for again soon is not decoded again. */
final class RecentLines {
    private final LightRows source;
    private final int firstColumn;
    private final int columns;
    private final float[][] lines;
    private final int[] held;

    /**
     * Holds nothing yet.
     *
     * @param firstColumn the first column that is read
     * @param columns how many
     * @param count how many rows are held; neighbouring rows never push each other out
     */
    RecentLines(LightRows source, int firstColumn, int columns, int count) {
        this.source = source;
        this.firstColumn = firstColumn;
        this.columns = columns;
        this.lines = new float[count][];
        this.held = new int[count];
        Arrays.fill(held, -1);
    }

    /** The light of a row, valid until {@code count} further ones were asked for. */
    float[] line(int row) throws IOException {
        int slot = row % lines.length;
        if (held[slot] != row) {
            if (lines[slot] == null) {
                lines[slot] = new float[columns * source.channels()];
            }
            held[slot] = -1;
            source.read(firstColumn, row, columns, 1, lines[slot]);
            held[slot] = row;
        }
        return lines[slot];
    }
}
