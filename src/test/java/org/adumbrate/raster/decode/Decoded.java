package org.adumbrate.raster.decode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import org.adumbrate.raster.RasterInfo;
import org.adumbrate.raster.RasterReader;

/** A whole file decoded to light, as stored; the promises of the reader about order are checked on the way. */
public final class Decoded {
    private final RasterInfo info;
    private final float[][] rows;

    private Decoded(RasterInfo info, float[][] rows) {
        this.info = info;
        this.rows = rows;
    }

    public static Decoded of(Path file) throws IOException {
        try (RasterReader reader = RasterFiles.open(file)) {
            RasterInfo info = reader.info();
            int channels = info.light().lightChannels();
            int width = info.stored().width();
            float[][] rows = new float[info.stored().height()][width * channels];
            for (float[] row : rows) {
                Arrays.fill(row, Float.NaN);
            }
            int[] next = {0};
            reader.decode((x, y, pixels, samples, offset) -> {
                if (info.inOrder()) {
                    assertThat(new int[] {x, y, pixels}).containsExactly(0, next[0]++, width);
                }
                info.light().decode(samples, offset, pixels, rows[y], x * channels);
            });
            for (float[] row : rows) {
                for (float value : row) {
                    assertThat(value).as("every pixel is delivered").isNotNaN();
                }
            }
            return new Decoded(info, rows);
        }
    }

    /** What the file says of itself. */
    public RasterInfo info() {
        return info;
    }

    /** The light of a channel of a pixel as stored. */
    public float at(int x, int y, int channel) {
        return rows[y][x * info.light().lightChannels() + channel];
    }

    /** Checks every pixel against a formula. */
    public void check(Formula formula, double tolerance) {
        for (int y = 0; y < rows.length; y++) {
            for (int x = 0; x < info.stored().width(); x++) {
                for (int c = 0; c < info.light().lightChannels(); c++) {
                    assertThat((double) at(x, y, c))
                            .as("channel %d of (%d, %d)", c, x, y)
                            .isCloseTo(formula.light(x, y, c), offset(tolerance));
                }
            }
        }
    }

    /** The light expected of a channel of a pixel. */
    @FunctionalInterface
    public interface Formula {
        double light(int x, int y, int channel);
    }
}
