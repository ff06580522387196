package org.adumbrate.raster;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What one thread holds of a raster in light does not grow with the ratio of raster to canvas, nor with the strip. */
class HeldSourceTest {
    /** More than four rows of the widest raster, and than a turned tile's patch. */
    private static final long MOST = 300_000;

    /** A raster of any size without memory, that knows into how much memory it was read. */
    private record Recorder(PixelSize size, Set<float[]> targets) implements LightRows {
        Recorder(PixelSize size) {
            this(size, Collections.newSetFromMap(new IdentityHashMap<>()));
        }

        @Override
        public int channels() {
            return 1;
        }

        @Override
        public void read(int x, int y, int width, int height, float[] light) {
            targets.add(light);
            Arrays.fill(light, 0, width * height, 0.5f);
        }

        @Override
        public void releaseAbove(int row) {
            // nothing is held
        }

        @Override
        public void close() {
            // nothing is held
        }

        long held() {
            return targets.stream().mapToLong(each -> each.length).sum();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "1, 1",
        "1, 64",
        "1, 512",
        "1.5, 64",
        "2, 512",
        "3, 512",
        "7.3, 64",
        "7.3, 512",
        "40, 1",
        "40, 64",
        "40, 512",
        "200, 1",
        "200, 64",
        "200, 512"
    })
    void uprightALineOrAFew(double ratio, int stripRows) throws Exception {
        SheetSize sheet = new SheetSize(30, 600);
        PixelSize pixels = new PixelSize(30, 600);
        Recorder source = new Recorder(new PixelSize((int) (30 * ratio), (int) (600 * ratio)));
        Canvas canvas = Canvas.whole(sheet, pixels);
        run(Resampler.of(source, sheet.frame().placing(source.size()), canvas), pixels, stripRows);
        assertThat(source.held()).isLessThanOrEqualTo(4L * source.size().width());
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "1, 64", "1, 512", "7.3, 512", "40, 1", "40, 64", "40, 512", "200, 1", "200, 64"})
    void turnedAPatch(double ratio, int stripRows) throws Exception {
        SheetSize sheet = new SheetSize(3, 600);
        PixelSize pixels = new PixelSize(3, 600);
        for (double angle : new double[] {0.01, 0.7, Math.PI / 2}) {
            Recorder source = new Recorder(new PixelSize((int) (600 * ratio), (int) (600 * ratio)));
            double c = Math.cos(angle) / ratio;
            double s = Math.sin(angle) / ratio;
            Affine<RasterPoint, SheetPoint> placement = new Affine<>(Space.RASTER, Space.SHEET, c, -s, 2, s, c, 1);
            Canvas canvas = Canvas.whole(sheet, pixels);
            // a few strips tell as much, and places of a strongly reduced pixel are many
            PixelSize some = new PixelSize(3, ratio < 100 ? Math.min(600, 2 * stripRows) : Math.min(64, stripRows));
            run(Resampler.of(source, placement, canvas), some, stripRows);
            assertThat(source.targets().stream()
                            .mapToLong(each -> each.length)
                            .max()
                            .orElse(0))
                    .as("turned by %s", angle)
                    .isLessThanOrEqualTo(MOST);
        }
    }

    private static void run(Resampler resampler, PixelSize pixels, int stripRows) throws Exception {
        Resampler.Cursor cursor = resampler.cursor();
        float[] row = new float[pixels.width()];
        for (int y = 0; y < pixels.height(); y += stripRows) {
            int rows = Math.min(stripRows, pixels.height() - y);
            cursor.begin(y, rows);
            for (int k = y; k < y + rows; k++) {
                cursor.row(k, row);
            }
        }
    }
}
