package org.adumbrate.start;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.DepthFit;
import org.adumbrate.perspective.DepthReading;
import org.adumbrate.perspective.FittedDepth;
import org.adumbrate.perspective.HeightLine;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.StoredNumbers;
import org.adumbrate.raster.decode.RasterFiles;

/**
 * The range of a depth pass for a supposed focal length. Distances are then as wrong as that length is, all alike, so that
 * what hides what still comes out right.
 */
final class DepthRange {
    private static final long MOST_PIXELS = 64_000_000;

    private DepthRange() {}

    /** The range, or nothing if the pass does not say or is no plain grey. */
    static Optional<FittedDepth> of(PassFile pass, List<HeightLine> lines, double focalMm) throws IOException {
        try (RasterReader reader = RasterFiles.open(pass.file())) {
            StoredNumbers numbers = StoredNumbers.read(reader, MOST_PIXELS);
            return Optional.of(DepthFit.of(readings(numbers, pass, lines), focalMm, DrawnView.SUPPOSED_M));
        } catch (Refusal | InputFault reason) {
            return Optional.empty();
        }
    }

    private static List<DepthReading> readings(StoredNumbers numbers, PassFile pass, List<HeightLine> lines) {
        Affine<SheetPoint, RasterPoint> toPixels =
                numbers.toFile().then(pass.placement().passToSheet()).inverse();
        PixelSize size = numbers.size();
        List<DepthReading> readings = new ArrayList<>();
        for (HeightLine line : lines) {
            RasterPoint at = toPixels.apply(line.foot());
            int x = (int) Math.floor(at.x());
            int y = (int) Math.floor(at.y());
            boolean isOn = x >= 0 && y >= 0 && x < size.width() && y < size.height();
            if (isOn && numbers.values()[y * size.width() + x] < 1) {
                readings.add(new DepthReading(line, numbers.values()[y * size.width() + x]));
            }
        }
        return readings;
    }
}
