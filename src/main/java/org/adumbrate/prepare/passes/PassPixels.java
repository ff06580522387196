package org.adumbrate.prepare.passes;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.raster.DecodedRows;
import org.adumbrate.raster.GreyReduction;
import org.adumbrate.raster.RasterInfo;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.RowPassage;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.decode.RasterFiles;
import org.adumbrate.registration.PassImage;
import org.adumbrate.underlay.PassTones;

/**
 * The pixels of a pass, from which rows are drawn several times: to place it, to measure its tones, to blend it. A pass of
 * moderate size is decoded once and held; a larger one is decoded each time and passes through a window of rows.
 *
 * @param file where it is
 * @param content by what it is known
 * @param info what the file says of itself
 * @param allowance bytes of its samples that may be kept in memory
 * @param held its rows, where they are held; they are decoded in the background
 */
public record PassPixels(Path file, String content, RasterInfo info, long allowance, Optional<DecodedRows> held) {
    /** Rows kept where a pass is only looked at from top to bottom. */
    private static final int LOOKING_WINDOW = 64;

    /** A pass is placed by a picture of it with no more pixels than this. */
    private static final long PLACING_PIXELS = 16_000_000;

    /** Opens a pass to be read once, from the top. */
    public static PassPixels passing(Path file, long allowance) throws IOException {
        try (RasterReader reader = RasterFiles.open(file)) {
            return new PassPixels(file, file.toString(), reader.info(), allowance, Optional.empty());
        }
    }

    /** Opens a pass to be read again and again: one of moderate size begins to be decoded. */
    static PassPixels of(Path file, long allowance, Run run) throws IOException {
        String content = run.digest(file);
        return run.of(Part.PIXELS, PassPixels.class, List.of(content, allowance), () -> {
            RasterReader reader = RasterFiles.open(file);
            if (reader.info().sampleBytes() <= allowance) {
                DecodedRows rows = DecodedRows.whole(reader, allowance);
                return new PassPixels(file, content, rows.info(), allowance, Optional.of(rows));
            }
            reader.close();
            return new PassPixels(file, content, reader.info(), allowance, Optional.empty());
        });
    }

    /** A grey picture of the pass, to place it by. */
    public PassImage image() throws IOException {
        try (Rows rows = look()) {
            int factor = GreyReduction.factorFor(info.size(), PLACING_PIXELS);
            return new PassImage(GreyReduction.of(rows.rows(), factor), info.size());
        }
    }

    /** Its tones. */
    PassTones tones() throws IOException {
        try (Rows rows = look()) {
            return PassTones.measure(rows.rows());
        }
    }

    /**
     * What is to be known of the pass: what its head made one pass over or guess, and numbers in it that are no light. Only
     * floating-point ones can be none; a pass of these is read once for that.
     */
    List<String> notes() throws IOException {
        List<String> notes = new ArrayList<>(info.notes());
        if (info.type() == SampleType.FLOAT) {
            try (Rows rows = look()) {
                rows.rows().awaitAll().ifPresent(notes::add);
            }
        }
        return notes;
    }

    /** What may be kept in memory of each of so many passes: together no more than half of the heap. */
    public static long allowance(int passes) {
        return Runtime.getRuntime().maxMemory() / 2 / Math.max(1, passes);
    }

    /** Its rows from the top, to be looked at once. */
    Rows look() throws IOException {
        return held.isPresent()
                ? new Rows(held.get(), false)
                : new Rows(DecodedRows.windowed(RasterFiles.open(file), LOOKING_WINDOW, allowance), true);
    }

    /** Its rows, to be laid onto a canvas in strips of so many rows by so many threads. */
    Rows rows(Affine<RasterPoint, SheetPoint> placement, Canvas canvas, int stripRows, int threads) throws IOException {
        if (held.isPresent()) {
            return new Rows(held.get(), false);
        }
        RowPassage passage = RowPassage.of(info, placement, canvas, stripRows, threads, allowance);
        return new Rows(DecodedRows.passing(RasterFiles.open(file), passage, allowance), true);
    }

    /** Rows on loan: closing gives them back, and closes them if they were opened for this loan alone. */
    public record Rows(DecodedRows rows, boolean owned) implements Closeable {
        @Override
        public void close() throws IOException {
            if (owned) {
                rows.close();
            }
        }
    }
}
