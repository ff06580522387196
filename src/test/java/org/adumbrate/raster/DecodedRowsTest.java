package org.adumbrate.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.Random;
import org.adumbrate.fault.InputFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecodedRowsTest {
    private static final int WIDTH = 7;
    private static final int HEIGHT = 50;

    private static byte[] noise(int count) {
        byte[] values = new byte[count];
        new Random(5).nextBytes(values);
        return values;
    }

    @Test
    void aWindowOfRowsIsEnoughToReadThemAll() throws IOException {
        byte[] values = noise(WIDTH * HEIGHT);
        MemoryReader reader = new MemoryReader(WIDTH, HEIGHT, 1, values, Orientation.TOP_LEFT);
        try (DecodedRows rows = DecodedRows.windowed(reader, 5, 0)) {
            assertThat(rows.isWhole()).isFalse();
            float[] light = new float[3 * WIDTH];
            for (int y = 0; y + 3 <= HEIGHT; y++) {
                rows.read(0, y, WIDTH, 3, light);
                assertThat(light[WIDTH + 2]).isEqualTo((values[(y + 1) * WIDTH + 2] & 0xff) / 255f);
                rows.releaseAbove(y + 1);
            }
        }
    }

    /** Each pixel must be found where Exif says it is seen: JEITA CP-3451, Orientation, restated as corners. */
    @ParameterizedTest
    @CsvSource({"1, 123456", "2, 321654", "3, 654321", "4, 456123", "5, 142536", "6, 415263", "7, 635241", "8, 362514"})
    void turnedRastersAreSeenUpright(int exif, String seen) throws IOException {
        Orientation orientation = Orientation.ofExif(exif);
        byte[] values = {1, 2, 3, 4, 5, 6};
        for (long allowance : new long[] {1 << 20, 0}) {
            try (DecodedRows rows =
                    DecodedRows.windowed(new MemoryReader(3, 2, 1, values, orientation), 2, allowance)) {
                float[] light = new float[6];
                rows.read(0, 0, rows.size().width(), rows.size().height(), light);
                StringBuilder text = new StringBuilder();
                for (float each : light) {
                    text.append(Math.round(each * 255));
                }
                assertThat(text).hasToString(seen);
            }
        }
    }

    private static RasterReader floats(boolean inOrder, float... values) {
        RasterInfo info = new RasterInfo(
                java.nio.file.Path.of("reals.tif"),
                "TIFF",
                new org.adumbrate.geometry.PixelSize(2, values.length / 2),
                Orientation.TOP_LEFT,
                SampleType.FLOAT,
                new LightDecoder() {
                    @Override
                    public int storedChannels() {
                        return 1;
                    }

                    @Override
                    public int lightChannels() {
                        return 1;
                    }

                    @Override
                    public void decode(Samples samples, int from, int pixels, float[] light, int at) {
                        System.arraycopy(((Samples.Floats) samples).values(), from, light, at, pixels);
                    }
                },
                java.util.OptionalDouble.empty(),
                inOrder);
        return new RasterReader() {
            @Override
            public RasterInfo info() {
                return info;
            }

            @Override
            public void decode(SampleSink sink) {
                for (int y = 0; y < values.length / 2; y++) {
                    sink.put(0, y, 2, new Samples.Floats(values), 2 * y);
                }
            }

            @Override
            public void close() {}
        };
    }

    @Test
    void numbersThatAreNoLightAreRefusedWithCountAndPlace() throws IOException {
        float nan = Float.NaN;
        float infinite = Float.NEGATIVE_INFINITY;
        for (boolean inOrder : new boolean[] {true, false}) {
            for (float[] values : new float[][] {{0, 1, 1, nan, infinite, 1}, {0, 1, 1, nan, 1, 1, 1, infinite}}) {
                try (DecodedRows rows = DecodedRows.windowed(floats(inOrder, values), 8, 1 << 20)) {
                    assertThatThrownBy(() -> rows.read(0, 0, 2, values.length / 2, new float[values.length]))
                            .isInstanceOf(InputFault.class)
                            .hasMessageContaining("holds 2 values that are no light")
                            .hasMessageContaining("the first in column 1 of row 1");
                }
            }
        }
    }

    @Test
    void negativeNumbersAreTold() throws IOException {
        try (DecodedRows rows = DecodedRows.windowed(floats(true, 0, 1, -0.5f, 2, -1, 1), 8, 1 << 20)) {
            assertThat(rows.awaitAll())
                    .get()
                    .asString()
                    .contains("2 negative values")
                    .contains("column 0 of row 1");
        }
        try (DecodedRows rows = DecodedRows.windowed(floats(true, 0, 1), 8, 1 << 20)) {
            assertThat(rows.awaitAll()).isEmpty();
        }
    }

    @Test
    void readingOutsideTheWindowIsADefectAndDoesNotHang() throws IOException {
        MemoryReader reader = new MemoryReader(WIDTH, HEIGHT, 1, noise(WIDTH * HEIGHT), Orientation.TOP_LEFT);
        try (DecodedRows rows = DecodedRows.windowed(reader, 2, 0)) {
            assertThatThrownBy(() -> rows.read(0, 0, WIDTH, 3, new float[3 * WIDTH]))
                    .isInstanceOf(IllegalStateException.class);
        }
    }

    @Test
    void aFailureOfTheDecoderReachesWhoReads() throws IOException {
        MemoryReader whole = new MemoryReader(WIDTH, HEIGHT, 1, noise(WIDTH * HEIGHT), Orientation.TOP_LEFT);
        RasterReader broken = new RasterReader() {
            @Override
            public RasterInfo info() {
                return whole.info();
            }

            @Override
            public void decode(SampleSink sink) throws IOException {
                sink.put(0, 0, WIDTH, Samples.allocate(SampleType.BYTE, WIDTH), 0);
                throw new InputFault(info().file(), "ends after row 1 of 50", "export it again");
            }

            @Override
            public void close() {}
        };
        try (DecodedRows rows = DecodedRows.windowed(broken, 10, 0)) {
            assertThatThrownBy(() -> rows.read(0, 5, WIDTH, 1, new float[WIDTH]))
                    .isInstanceOf(InputFault.class)
                    .hasMessage("memory: ends after row 1 of 50; export it again");
        }
    }

    @Test
    void closingStopsADecoderThatWaits() throws IOException {
        MemoryReader reader = new MemoryReader(WIDTH, HEIGHT, 1, noise(WIDTH * HEIGHT), Orientation.TOP_LEFT);
        DecodedRows rows = DecodedRows.windowed(reader, 2, 0);
        rows.close();
    }
}
