package org.adumbrate.raster;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.junit.jupiter.api.Test;

/** Whatever the ratio of raster to canvas, the strips and the threads: what is held is bounded, and the rows are the same. */
class RowPassageTest {
    private static final long HALF_OF_A_GIGABYTE = 1L << 29;

    private static Affine<RasterPoint, SheetPoint> turned(double angle, double mmPerPixel) {
        double c = Math.cos(angle) * mmPerPixel;
        double s = Math.sin(angle) * mmPerPixel;
        return new Affine<>(Space.RASTER, Space.SHEET, c, -s, 0, s, c, 0);
    }

    @Property(tries = 400, seed = "1")
    void whatIsHeldOfALargeRasterIsBounded(
            @ForAll @DoubleRange(min = 1, max = 200) double ratio,
            @ForAll @IntRange(min = 1, max = 512) int stripRows,
            @ForAll @IntRange(min = 1, max = 8) int threads,
            @ForAll @IntRange(min = 0, max = 3) int turn) {
        PixelSize size = new PixelSize(34000, 22000);
        RasterInfo raster = new PatternReader(size, 3).info();
        SheetSize sheet = new SheetSize(340, 220);
        Canvas canvas =
                Canvas.whole(sheet, new PixelSize((int) Math.ceil(34000 / ratio), (int) Math.ceil(22000 / ratio)));
        double angle = new double[] {0, 0.004, 0.5, 2.5}[turn];
        RowPassage passage = RowPassage.of(raster, turned(angle, 0.01), canvas, stripRows, threads, HALF_OF_A_GIGABYTE);
        long strips = 4L * 3 * canvas.whole().width() * stripRows * OrderedStrips.window(threads);
        long window = 3L * 34000 * passage.rows();
        if (passage.rows() < size.height()) {
            assertThat(window + (passage.inTurn() ? strips : 0)).isLessThanOrEqualTo(HALF_OF_A_GIGABYTE);
        }
        if (angle == 0 && ratio > 10 && stripRows <= 64) {
            assertThat(window).as("a strong reduction streams").isLessThanOrEqualTo(RowPassage.MODERATE);
        }
    }

    /** Usual sheets are resampled by all threads at once. */
    @Test
    void aPassNearPrintResolutionPassesInStrips() {
        RasterInfo raster = new PatternReader(new PixelSize(5100, 3300), 3).info();
        SheetSize sheet = new SheetSize(431.8, 279.4);
        Canvas canvas = Canvas.whole(sheet, 300);
        RowPassage passage =
                RowPassage.of(raster, sheet.frame().placing(raster.size()), canvas, 64, 8, HALF_OF_A_GIGABYTE);
        assertThat(passage.inTurn()).isFalse();
        assertThat(passage.rows()).isBetween(64 * 16, 64 * 18);
    }

    @Property(tries = 30, seed = "2")
    void everyWayGivesTheSameRows(
            @ForAll @DoubleRange(min = 1, max = 200) double ratio,
            @ForAll @IntRange(min = 1, max = 512) int stripRows,
            @ForAll @IntRange(min = 1, max = 8) int threads,
            @ForAll @IntRange(min = 0, max = 2) int turn,
            @ForAll boolean colour,
            @ForAll @DoubleRange(min = -0.2, max = 0.2) double shift)
            throws IOException {
        int channels = colour ? 3 : 1;
        PixelSize size = new PixelSize(turn == 0 ? 110 : 60, turn == 0 ? 3000 : 300);
        SheetSize sheet = new SheetSize(size.width(), size.height());
        Canvas whole = Canvas.whole(sheet, new PixelSize(Math.max(1, (int) (size.width() / ratio)), Math.max(1, (int)
                (size.height() / ratio))));
        Affine<RasterPoint, SheetPoint> placement = turn == 0
                ? Affine.scalingThenShift(
                        Space.RASTER, Space.SHEET, 1, 0.9, shift * size.width(), shift * size.height())
                : turned(turn == 1 ? 0.01 : 0.4, 1);
        float[] expected;
        try (DecodedRows rows = DecodedRows.whole(new PatternReader(size, channels), Long.MAX_VALUE)) {
            expected = resampled(
                    Resampler.of(rows, placement, whole), whole, whole.whole().height(), 1);
        }
        int cut = whole.whole().height() / 3;
        PixelBox lower =
                new PixelBox(0, cut, whole.whole().width(), whole.whole().height() - cut);
        for (Canvas canvas : new Canvas[] {whole, whole.window(lower)}) {
            int from = canvas.window().top() * canvas.whole().width() * channels;
            float[] part = Arrays.copyOfRange(expected, from, expected.length);
            RasterInfo info = new PatternReader(size, channels).info();
            Set<RowPassage> ways = new HashSet<>();
            for (long allowance : new long[] {20_000, 200_000, 700_000, Long.MAX_VALUE}) {
                ways.add(RowPassage.of(info, placement, canvas, stripRows, threads, allowance));
            }
            if (turn == 0) {
                ways.add(new RowPassage(TrailingRows.WINDOW, true));
            }
            for (RowPassage way : ways) {
                try (DecodedRows rows = DecodedRows.passing(new PatternReader(size, channels), way, 20_000)) {
                    float[] light = resampled(Resampler.of(rows, placement, canvas), canvas, stripRows, threads);
                    assertThat(light).as("%s", way).isEqualTo(part);
                }
            }
        }
    }

    /** With little allowed, the decoder is never further ahead of what was read than its window. */
    @Test
    void aRasterOfAnyHeightPassesThroughAFewRows() throws IOException {
        PixelSize size = new PixelSize(64, 120_000);
        SheetSize sheet = new SheetSize(64, 120_000);
        for (int ratio : new int[] {5, 40, 200, 30_000}) {
            PatternReader reader = new PatternReader(size, 1);
            Canvas canvas = Canvas.whole(sheet, new PixelSize(64 / Math.min(ratio, 64), size.height() / ratio));
            RowPassage passage = RowPassage.of(reader.info(), sheet.frame().placing(size), canvas, 512, 8, 2_000_000);
            assertThat(passage).isEqualTo(new RowPassage(TrailingRows.WINDOW, true));
            try (DecodedRows rows = DecodedRows.passing(reader, passage, 2_000_000)) {
                AtomicInteger read = new AtomicInteger();
                Resampler resampler = Resampler.of(
                        new Watched(rows, reader, read), sheet.frame().placing(size), canvas);
                resampled(resampler, canvas, 512, 8);
            }
        }
    }

    /** Rows of which the decoder must not be far ahead. */
    private record Watched(DecodedRows rows, PatternReader reader, AtomicInteger last) implements LightRows {
        @Override
        public PixelSize size() {
            return rows.size();
        }

        @Override
        public int channels() {
            return rows.channels();
        }

        @Override
        public boolean inTurn() {
            return rows.inTurn();
        }

        @Override
        public void read(int x, int y, int width, int height, float[] light) throws IOException {
            rows.read(x, y, width, height, light);
            last.accumulateAndGet(y, Math::max);
            assertThat(reader.begun() - last.get()).isLessThanOrEqualTo(TrailingRows.WINDOW + 1);
        }

        @Override
        public void releaseAbove(int row) {
            rows.releaseAbove(row);
        }

        @Override
        public void close() throws IOException {
            rows.close();
        }
    }

    private static float[] resampled(Resampler resampler, Canvas canvas, int stripRows, int threads)
            throws IOException {
        PixelBox window = canvas.window();
        int length = window.width() * resampler.channels();
        float[] light = new float[window.height() * length];
        resampler.releaseAbove(window.top());
        OrderedStrips.<Resampler.Cursor, Integer>run(
                (window.height() + stripRows - 1) / stripRows,
                threads,
                resampler::cursor,
                (cursor, strip) -> {
                    int from = strip * stripRows;
                    int end = Math.min(window.height(), from + stripRows);
                    cursor.begin(window.top() + from, end - from);
                    float[] row = new float[length];
                    for (int k = from; k < end; k++) {
                        cursor.row(window.top() + k, row);
                        System.arraycopy(row, 0, light, k * length, length);
                    }
                    return end;
                },
                (strip, end) -> resampler.releaseAbove(window.top() + end));
        return light;
    }
}
