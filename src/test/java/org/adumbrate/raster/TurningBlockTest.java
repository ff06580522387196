package org.adumbrate.raster;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.adumbrate.geometry.PixelSize;
import org.junit.jupiter.api.Test;

class TurningBlockTest {
    /** Keeps single samples and counts what it is given. */
    private static final class Grid implements RowStore {
        private final PixelSize size;
        private final int channels;
        private final byte[] values;
        private long puts;

        Grid(PixelSize size, int channels) {
            this.size = size;
            this.channels = channels;
            this.values = new byte[Math.toIntExact(size.count() * channels)];
        }

        @Override
        public void put(int x, int y, int pixels, Samples samples, int offset) {
            assertThat(x + pixels).isLessThanOrEqualTo(size.width());
            byte[] from = ((Samples.Bytes) samples).values();
            System.arraycopy(from, offset, values, (y * size.width() + x) * channels, pixels * channels);
            puts++;
        }

        @Override
        public void decode(LightDecoder decoder, int x, int y, int pixels, float[] light, int at) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void close() {
            // nothing is held
        }
    }

    private record Piece(int x, int y, int pixels) {}

    /** Tiles in any order, some of them twice with other samples: the last one counts. */
    @Property(tries = 100, seed = "1")
    void eachPixelIsSeenWhereItsOrientationSays(
            @ForAll @IntRange(min = 1, max = 8) int exif,
            @ForAll @IntRange(min = 1, max = 40) int width,
            @ForAll @IntRange(min = 1, max = 40) int height,
            @ForAll @IntRange(min = 1, max = 17) int tile,
            @ForAll long seed) {
        Random random = new Random(seed);
        int channels = random.nextBoolean() ? 1 : 3;
        Orientation orientation = Orientation.ofExif(exif);
        PixelSize seen = orientation.seen(new PixelSize(width, height));
        Grid grid = new Grid(seen, channels);
        byte[] expected = new byte[grid.values.length];
        TurningBlock block = new TurningBlock(grid, orientation, seen, channels, SampleType.BYTE);
        for (Piece piece : pieces(width, height, tile, random)) {
            byte[] samples = new byte[2 + piece.pixels * channels];
            random.nextBytes(samples);
            block.put(piece.x, piece.y, piece.pixels, new Samples.Bytes(samples), 2);
            for (int k = 0; k < piece.pixels; k++) {
                int row = orientation.seenY(piece.x + k, piece.y, seen);
                int column = orientation.seenX(piece.x + k, piece.y, seen);
                System.arraycopy(
                        samples, 2 + k * channels, expected, (row * seen.width() + column) * channels, channels);
            }
        }
        block.flush();
        assertThat(grid.values).isEqualTo(expected);
    }

    private static List<Piece> pieces(int width, int height, int tile, Random random) {
        List<Integer> corners = new ArrayList<>();
        int across = (width + tile - 1) / tile;
        int down = (height + tile - 1) / tile;
        for (int k = 0; k < across * down; k++) {
            corners.add(k);
        }
        corners.add(random.nextInt(across * down));
        Collections.shuffle(corners, random);
        List<Piece> pieces = new ArrayList<>();
        for (int corner : corners) {
            int x = corner % across * tile;
            int top = corner / across * tile;
            for (int y = top; y < Math.min(height, top + tile); y++) {
                pieces.add(new Piece(x, y, Math.min(tile, width - x)));
            }
        }
        return pieces;
    }

    @Test
    void aTurnedRasterIsStoredByTheRunAndNotByThePixel() {
        PixelSize stored = new PixelSize(500, 2000);
        PixelSize seen = Orientation.RIGHT_TOP.seen(stored);
        Grid grid = new Grid(seen, 1);
        TurningBlock block = new TurningBlock(grid, Orientation.RIGHT_TOP, seen, 1, SampleType.BYTE);
        Samples row = Samples.allocate(SampleType.BYTE, 500);
        for (int y = 0; y < 2000; y++) {
            block.put(0, y, 500, row, 0);
        }
        block.flush();
        assertThat(grid.puts).isEqualTo(500);
    }
}
