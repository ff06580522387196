package org.adumbrate.raster;

import java.io.IOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.adumbrate.geometry.PixelBox;

/**
 * Makes the rows of a canvas in order, once for all threads: whoever asks for a row that is not made yet makes it and all
 * before it, and rows are kept until they are released. So a raster that is reduced strongly needs a window of its rows for one row of the
 * canvas and not for all strips that are computed at a time. The decoder limits such work anyway; other strips are packed
 * meanwhile. The rows are the very ones that the resampler behind it makes.
 */
final class SharedResampler implements Resampler {
    private final Resampler direct;
    private final PixelBox window;
    private final int batch;
    private final Cursor maker;
    private final Map<Integer, float[]> made = new ConcurrentHashMap<>();
    private final Object turn = new Object();
    private int next;

    /**
     * Nothing is made yet.
     *
     * @param direct makes the rows
     * @param window the canvas's
     * @param batch rows that are made at a time
     */
    SharedResampler(Resampler direct, PixelBox window, int batch) {
        this.direct = direct;
        this.window = window;
        this.batch = batch;
        this.maker = direct.cursor();
        this.next = window.top();
    }

    @Override
    public int channels() {
        return direct.channels();
    }

    @Override
    public RowSpan sourceRows(int y, int rows) {
        return direct.sourceRows(y, rows);
    }

    /** Lets go of rows of the canvas; the raster's are released as they are read. */
    @Override
    public void releaseAbove(int y) {
        made.keySet().removeIf(row -> row < y);
    }

    private float[] made(int y) throws IOException {
        float[] row = made.get(y);
        if (row != null) {
            return row;
        }
        synchronized (turn) {
            while (next <= y) {
                make(Math.min(batch, window.bottom() - next));
            }
        }
        return made.get(y);
    }

    private void make(int rows) throws IOException {
        direct.releaseAbove(next);
        maker.begin(next, rows);
        for (int end = next + rows; next < end; next++) {
            float[] row = new float[window.width() * channels()];
            maker.row(next, row);
            made.put(next, row);
        }
    }

    @Override
    public Cursor cursor() {
        return new SharedCursor();
    }

    private final class SharedCursor implements Cursor {
        private final Cursor own = direct.cursor();

        @Override
        public void begin(int y, int rows) {
            // rows are made when they are asked for
        }

        @Override
        public void row(int y, float[] light) throws IOException {
            float[] row = made(y);
            System.arraycopy(row, 0, light, 0, row.length);
        }

        @Override
        public boolean coverage(int y, float[] share) {
            return own.coverage(y, share);
        }
    }
}
