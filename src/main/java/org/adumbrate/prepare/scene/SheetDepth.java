package org.adumbrate.prepare.scene;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
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
import org.adumbrate.prepare.lines.KnownDepth;
import org.adumbrate.prepare.lines.LineFiles;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.raster.GreyImage;
import org.adumbrate.raster.GreyReduction;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.StoredNumbers;
import org.adumbrate.raster.decode.RasterFiles;
import org.adumbrate.registration.FramePlacement;
import org.adumbrate.registration.PassImage;
import org.adumbrate.registration.Placement;
import org.adumbrate.registration.Registration;

/**
 * The depth pass of a sheet, read and placed; what its numbers stand for is settled elsewhere.
 *
 * @param file where it is
 * @param digest of its content
 * @param numbers as the file stores them, 0 to 1 from near to far; 1 is the background
 * @param whole its size in the file
 * @param placed where it lies
 */
public record SheetDepth(
        Path file, String digest, StoredNumbers numbers, PixelSize whole, FramePlacement.Pinned placed) {
    /** No more pixels are kept than this; of a larger pass every so-manieth. */
    private static final long MOST_PIXELS = 64_000_000;

    private static final long PLACING_PIXELS = 16_000_000;

    /** A depth pass as it is stored, and its size in the file. */
    private record Stored(StoredNumbers numbers, PixelSize whole) {
        static Stored read(Path file) throws IOException {
            try (RasterReader reader = RasterFiles.open(file)) {
                PixelSize whole = reader.info().size();
                return new Stored(StoredNumbers.read(reader, MOST_PIXELS), whole);
            }
        }
    }

    /**
     * Reads and places a depth pass.
     *
     * @param frame where it lies, if that is pinned
     * @param files the lines that it is placed by
     * @throws Refusal if it does not belong to the sheet
     */
    static SheetDepth of(Path file, Optional<Frame> frame, LineFiles files, Run run) throws IOException, Refusal {
        String digest = run.digest(file);
        Stored stored = run.of(Part.DEPTH_NUMBERS, Stored.class, List.of(digest), () -> Stored.read(file));
        Placement found = run.of(
                Part.PLACEMENT,
                Placement.class,
                List.of(files.content(), digest),
                () -> Registration.register(
                        files.pattern(run), files.sheet(), new PassImage(picture(stored), stored.whole())));
        FramePlacement.Pinned placed = frame.map(pinned -> FramePlacement.pinned(pinned, found))
                .orElse(new FramePlacement.Pinned(found, false));
        if (!placed.placement().aligned()) {
            throw new Refusal(file + ": " + placed.placement().message()
                    + "; see it with adumbrate register LINES PASS --picture FILE.png");
        }
        return new SheetDepth(file, digest, stored.numbers(), stored.whole(), placed);
    }

    /** The background is white and near is dark: silhouettes stand out where lines are drawn. */
    private static GreyImage picture(Stored stored) {
        StoredNumbers numbers = stored.numbers();
        PixelSize whole = stored.whole();
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

    /** The pass as it is looked at to place it. */
    public PassImage image() {
        return new PassImage(picture(new Stored(numbers, whole)), whole);
    }

    public Placement placement() {
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

    /** By what it is known. */
    List<Object> content() {
        return List.of(digest, placement().passToSheet());
    }

    /** The pass in metres. */
    KnownDepth inMetres(DepthScale scale, Run run) throws IOException {
        List<Object> content = List.of(digest, placement().passToSheet(), scale);
        return new KnownDepth(
                content,
                run.of(
                        Part.DEPTH_MAP,
                        DepthMap.class,
                        content,
                        () -> DepthMap.of(numbers, scale, placement().passToSheet())));
    }
}
