package org.adumbrate.underlay;

import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.raster.Halt;
import org.adumbrate.raster.OrderedStrips;
import org.adumbrate.raster.Resampler;

/**
 * A pass resampled to a canvas once and held, before its look: blended again with any look it gives the very light that resampling
 * it again would give. Holds 32-bit floats, as fewer bits would not. Safe for use by several threads, and never changed.
 */
public final class HeldLight implements Resampler {
    /** Rows that are resampled at a time. */
    public static final int STRIP_ROWS = 64;

    /** What the rows hold. */
    private final PixelBox held;

    /** What of it this is. */
    private final PixelBox window;

    private final int channels;
    private final float[][] rows;

    /** The share of each pixel that the pass covers; none for a row that it covers wholly. */
    private final float[][] shares;

    /** What was found of its values; nothing as long as nobody asked. */
    private volatile Range range;

    /** The most light of any sample, and whether all channels are alike everywhere. */
    private record Range(float most, boolean grey) {}

    private HeldLight(PixelBox held, PixelBox window, int channels, float[][] rows, float[][] shares) {
        this.held = held;
        this.window = window;
        this.channels = channels;
        this.rows = rows;
        this.shares = shares;
    }

    /**
     * Resamples a pass.
     *
     * @param light the pass on the canvas; its rows are released as they are done with
     * @param threads how many threads compute
     * @param halt ends the work
     * @throws IOException if the pass cannot be read
     */
    public static HeldLight of(Resampler light, Canvas canvas, int threads, Halt halt) throws IOException {
        PixelBox window = canvas.window();
        int height = window.height();
        HeldLight held = new HeldLight(window, window, light.channels(), new float[height][], new float[height][]);
        light.releaseAbove(window.top());
        OrderedStrips.<Cursor, Integer>run(
                (height + STRIP_ROWS - 1) / STRIP_ROWS,
                threads,
                light::cursor,
                (cursor, strip) -> {
                    halt.check();
                    int from = strip * STRIP_ROWS;
                    int end = Math.min(height, from + STRIP_ROWS);
                    held.fill(cursor, from, end);
                    return end;
                },
                (strip, end) -> light.releaseAbove(window.top() + end));
        return held;
    }

    private void fill(Cursor cursor, int from, int end) throws IOException {
        cursor.begin(window.top() + from, end - from);
        float[] share = new float[window.width()];
        for (int k = from; k < end; k++) {
            rows[k] = new float[window.width() * channels];
            cursor.row(window.top() + k, rows[k]);
            if (cursor.coverage(window.top() + k, share)) {
                shares[k] = share.clone();
            }
        }
    }

    /**
     * A part of what is held, which is not copied.
     *
     * @throws IllegalArgumentException if the part is not held
     */
    public HeldLight within(PixelBox part) {
        if (!window.contains(part)) {
            throw new IllegalArgumentException(part + " does not lie in " + window);
        }
        return new HeldLight(held, part, channels, rows, shares);
    }

    /** What of the grid it holds. */
    public PixelBox window() {
        return window;
    }

    /** The most light of any sample, at least 1. */
    public float most() throws IOException {
        return range().most();
    }

    /** Whether it is grey everywhere, however many channels it has. */
    public boolean isGrey() throws IOException {
        return range().grey();
    }

    private Range range() throws IOException {
        if (range == null) {
            float most = 1;
            boolean grey = true;
            float[] row = new float[window.width() * channels];
            Cursor cursor = cursor();
            for (int y = window.top(); y < window.bottom(); y++) {
                cursor.row(y, row);
                for (int k = 0; k < row.length; k++) {
                    most = Math.max(most, row[k]);
                    grey &= row[k] == row[k - k % channels];
                }
            }
            range = new Range(most, grey);
        }
        return range;
    }

    /** Takes rows. */
    public interface RowTaker {
        /** Takes the next; it is not kept. */
        void take(float[] row);
    }

    /** Gives the light of all rows from the top: the channels of each pixel of the window together. */
    public void eachRow(RowTaker taker) throws IOException {
        Cursor cursor = cursor();
        float[] row = new float[window.width() * channels];
        for (int y = window.top(); y < window.bottom(); y++) {
            cursor.row(y, row);
            taker.take(row);
        }
    }

    /**
     * Gives what share of each pixel the pass counts for, row by row from the top.
     *
     * @param mask where it is to be seen
     * @return false, without giving any, where it counts wholly for all pixels
     */
    public boolean eachShare(Optional<RegionMask> mask, Canvas canvas, RowTaker taker) throws IOException {
        boolean varies = mask.isPresent();
        for (float[] share : shares) {
            varies |= share != null;
        }
        if (!varies) {
            return false;
        }
        PassShares counts = new PassShares(cursor(), mask, canvas);
        float[] row = new float[window.width()];
        for (int y = window.top(); y < window.bottom(); y++) {
            if (!counts.row(y, row)) {
                Arrays.fill(row, 1);
            }
            taker.take(row);
        }
        return true;
    }

    @Override
    public int channels() {
        return channels;
    }

    @Override
    public RowSpan sourceRows(int y, int count) {
        return new RowSpan(y, y + count);
    }

    @Override
    public void releaseAbove(int y) {
        // all of it stays
    }

    @Override
    public Cursor cursor() {
        return new Cursor() {
            @Override
            public void begin(int y, int count) {
                // every row is there
            }

            @Override
            public void row(int y, float[] light) {
                float[] row = rows[y - held.top()];
                System.arraycopy(row, (window.left() - held.left()) * channels, light, 0, window.width() * channels);
            }

            @Override
            public boolean coverage(int y, float[] share) {
                float[] partial = shares[y - held.top()];
                if (partial == null) {
                    return false;
                }
                System.arraycopy(partial, window.left() - held.left(), share, 0, window.width());
                return true;
            }
        };
    }
}
