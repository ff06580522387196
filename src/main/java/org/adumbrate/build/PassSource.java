package org.adumbrate.build;

import java.io.Closeable;
import java.io.IOException;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.raster.DecodedRows;
import org.adumbrate.raster.RasterInfo;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.RowPassage;
import org.adumbrate.raster.decode.RasterFiles;

/**
 * One pass, from which rows are drawn several times: to place it, to measure its tones, to blend it. A pass of moderate
 * size is decoded once and kept; a larger one is decoded anew each time and passes through a window of rows.
 */
final class PassSource implements Closeable {
    /** Rows kept where a pass is only looked at from top to bottom. */
    private static final int LOOKING_WINDOW = 64;

    private final PassRequest request;
    private final RasterInfo info;
    private final long allowance;
    private RasterReader unread;
    private DecodedRows held;

    private PassSource(PassRequest request, RasterReader reader, long allowance) {
        this.request = request;
        this.unread = reader;
        this.info = reader.info();
        this.allowance = allowance;
    }

    /**
     * Opens a pass.
     *
     * @param allowance bytes of its samples that may be kept in memory
     */
    static PassSource open(PassRequest request, long allowance) throws IOException {
        return new PassSource(request, RasterFiles.open(request.file()), allowance);
    }

    /** What may be kept in memory of each of so many passes: together no more than half of the heap. */
    static long allowance(int passes) {
        return Runtime.getRuntime().maxMemory() / 2 / Math.max(1, passes);
    }

    PassRequest request() {
        return request;
    }

    RasterInfo info() {
        return info;
    }

    /** Decodes the pass into memory if it is of moderate size; the decoding goes on in the background. */
    void holdIfModerate() throws IOException {
        if (held == null && info.sampleBytes() <= allowance) {
            held = DecodedRows.whole(reader(), allowance);
        }
    }

    /** Its rows from the top, to be looked at once. */
    Rows look() throws IOException {
        return held == null
                ? new Rows(DecodedRows.windowed(reader(), LOOKING_WINDOW, allowance), true)
                : new Rows(held, false);
    }

    /** Its rows, to be laid onto a canvas in strips of so many rows by so many threads. */
    Rows blend(Affine<RasterPoint, SheetPoint> placement, Canvas canvas, int stripRows, int threads)
            throws IOException {
        if (held != null) {
            return new Rows(held, false);
        }
        RowPassage passage = RowPassage.of(info, placement, canvas, stripRows, threads, allowance);
        return new Rows(DecodedRows.passing(reader(), passage, allowance), true);
    }

    private RasterReader reader() throws IOException {
        RasterReader reader = unread == null ? RasterFiles.open(request.file()) : unread;
        unread = null;
        return reader;
    }

    @Override
    public void close() throws IOException {
        if (held != null) {
            held.close();
        }
        if (unread != null) {
            unread.close();
        }
    }

    /** Rows on loan: closing gives them back, and closes them if they were opened for this loan alone. */
    record Rows(DecodedRows rows, boolean owned) implements Closeable {
        @Override
        public void close() throws IOException {
            if (owned) {
                rows.close();
            }
        }
    }
}
