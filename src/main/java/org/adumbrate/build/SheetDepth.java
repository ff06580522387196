package org.adumbrate.build;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.fault.Refusal;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.figure.depth.DepthScale;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Frame;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.raster.GreyImage;
import org.adumbrate.raster.GreyReduction;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.StoredNumbers;
import org.adumbrate.raster.decode.RasterFiles;
import org.adumbrate.registration.FramePlacement;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.registration.PassImage;
import org.adumbrate.registration.Placement;
import org.adumbrate.registration.Registration;

/**
 * The depth pass of a sheet, read and placed; what its numbers stand for is settled elsewhere.
 *
 * @param file where it is
 * @param numbers as the file stores them, 0 to 1 from near to far; 1 is the background
 * @param placed where it lies
 */
record SheetDepth(Path file, StoredNumbers numbers, FramePlacement.Pinned placed) {
    /** No more pixels are kept than this; of a larger pass every so-manieth. */
    private static final long MOST_PIXELS = 64_000_000;

    private static final long PLACING_PIXELS = 16_000_000;

    /**
     * Reads and places a depth pass.
     *
     * @param frame where it lies, if that is pinned
     * @param lines the lines that it is placed by
     * @param stages knows where it was found before
     * @throws Refusal if it does not belong to the sheet
     */
    static SheetDepth of(Path file, Optional<Frame> frame, SheetSize sheet, LinePattern lines, SheetStages stages)
            throws IOException, Refusal {
        StoredNumbers numbers;
        PixelSize whole;
        try (RasterReader reader = RasterFiles.open(file)) {
            whole = reader.info().size();
            numbers = StoredNumbers.read(reader, MOST_PIXELS);
        }
        Placement found = stages.placement(
                file, () -> Registration.register(lines, sheet, new PassImage(picture(numbers, whole), whole)));
        FramePlacement.Pinned placed = frame.map(pinned -> FramePlacement.pinned(pinned, found))
                .orElse(new FramePlacement.Pinned(found, false));
        if (!placed.placement().aligned()) {
            throw new Refusal(file + ": " + placed.placement().message()
                    + "; see it with adumbrate register LINES PASS --picture FILE.png");
        }
        return new SheetDepth(file, numbers, placed);
    }

    /** The background is white and near is dark: silhouettes stand out where lines are drawn. */
    private static GreyImage picture(StoredNumbers numbers, PixelSize whole) {
        int factor = GreyReduction.factorFor(whole, PLACING_PIXELS);
        int taken = GreyReduction.factorFor(whole, MOST_PIXELS);
        PixelSize size = new PixelSize(Math.max(1, whole.width() / factor), Math.max(1, whole.height() / factor));
        float[] light = new float[Math.toIntExact(size.count())];
        for (int y = 0; y < size.height(); y++) {
            for (int x = 0; x < size.width(); x++) {
                light[y * size.width() + x] =
                        at(numbers, (2 * x + 1) * factor / 2 / taken, (2 * y + 1) * factor / 2 / taken);
            }
        }
        return new GreyImage(size, light);
    }

    private static float at(StoredNumbers numbers, int x, int y) {
        PixelSize size = numbers.size();
        float value = numbers.values()[Math.min(y, size.height() - 1) * size.width() + Math.min(x, size.width() - 1)];
        return value >= 0 ? Math.min(1, value) : 1;
    }

    /** The pass as it is looked at to place it, read anew. */
    static PassImage image(Path file) throws IOException {
        try (RasterReader reader = RasterFiles.open(file)) {
            PixelSize whole = reader.info().size();
            return new PassImage(picture(StoredNumbers.read(reader, MOST_PIXELS), whole), whole);
        }
    }

    Placement placement() {
        return placed.placement();
    }

    /** The number at a place of the sheet, 0 to 1; nothing off the pass, or where it shows the background. */
    OptionalDouble levelAt(SheetPoint point) {
        Affine<SheetPoint, RasterPoint> toPixels =
                numbers.toFile().then(placement().passToSheet()).inverse();
        double u = Math.floor(toPixels.mapX(point.x(), point.y()));
        double v = Math.floor(toPixels.mapY(point.x(), point.y()));
        PixelSize size = numbers.size();
        if (!(u >= 0 && v >= 0 && u < size.width() && v < size.height())) {
            return OptionalDouble.empty();
        }
        int row = (int) v;
        int column = (int) u;
        float level = numbers.values()[row * size.width() + column];
        return level < 1 ? OptionalDouble.of(level) : OptionalDouble.empty();
    }

    /** The pass in metres; these numbers must not be asked for afterwards. */
    DepthMap inMetres(DepthScale scale) {
        return DepthMap.of(numbers, scale, placement().passToSheet());
    }
}
