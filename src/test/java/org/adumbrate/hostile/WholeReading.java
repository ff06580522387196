package org.adumbrate.hostile;

import java.io.IOException;
import java.nio.file.Path;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.read.LineSheets;
import org.adumbrate.linework.sort.ColorTally;
import org.adumbrate.raster.RasterInfo;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.decode.RasterFiles;

/** Reads files to their last pixel or stroke, and looks at all that comes out. */
final class WholeReading {
    private WholeReading() {}

    /** Every sample is turned into light, all of it finite and in its place. */
    static void raster(Path file) throws IOException {
        try (RasterReader reader = RasterFiles.open(file)) {
            RasterInfo info = reader.info();
            info.notes().forEach(WholeReading::requireOneLine);
            int channels = info.light().lightChannels();
            float[] light = new float[info.stored().width() * channels];
            reader.decode((x, y, pixels, samples, offset) -> {
                require(x >= 0 && x + pixels <= info.stored().width(), "a piece lies beside the picture");
                require(y >= 0 && y < info.stored().height(), "a piece lies below the picture");
                info.light().decode(samples, offset, pixels, light, 0);
                float sum = 0;
                for (int i = 0; i < pixels * channels; i++) {
                    sum += light[i] * 0;
                }
                require(sum == 0, "light is not finite");
            });
        }
    }

    /** Every stroke is measured. */
    static void lines(Path file) throws IOException {
        LineSheet sheet = LineSheets.read(file);
        ColorTally.of(sheet).forEach(tally -> require(Double.isFinite(tally.lengthMm()), "a length is not finite"));
        require(!sheet.page().toString().isBlank(), "the page has no size");
    }

    private static void requireOneLine(String note) {
        require(note.codePoints().noneMatch(Character::isISOControl), "a note of several lines");
    }

    private static void require(boolean condition, String otherwise) {
        if (!condition) {
            throw new IllegalStateException(otherwise);
        }
    }
}
