package org.adumbrate.registration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;

/**
 * The placements that follow from whole pixels alone: a full view fills its picture, or what is left of it between bars. A measured
 * placement that cannot be told from one of them is replaced by it, which is then right to the last digit.
 */
final class ExactFrames {
    /** Closer than this, in pixels, no measurement is trusted to tell two placements apart. */
    private static final double BLIND = 0.1;

    /** Standard deviations within which a measurement agrees with a frame. */
    private static final double SIGMAS = 2;

    private ExactFrames() {}

    /** All frames of a pass; maps are to pixels of the pass. */
    static List<Affine<SheetPoint, RasterPoint>> of(SheetSize sheet, PixelSize pass, PixelRect inside) {
        List<Affine<SheetPoint, RasterPoint>> frames = new ArrayList<>();
        PixelRect whole = new PixelRect(0, 0, pass.width(), pass.height());
        for (PixelRect r : inside.equals(whole) ? List.of(whole) : List.of(inside, whole)) {
            double sx = r.width() / sheet.widthMm();
            double sy = r.height() / sheet.heightMm();
            double x = sheet.widthMm() / 2;
            double y = sheet.heightMm() / 2;
            double u = (r.left() + r.right()) / 2.0;
            double v = (r.top() + r.bottom()) / 2.0;
            frames.add(Lay.scaling(sx, sx, x, y, u, v));
            frames.add(Lay.scaling(sx, sy, x, y, u, v));
            frames.add(Lay.scaling(sy, sy, x, y, u, v));
        }
        return frames;
    }

    /**
     * The frame that a measured placement agrees with, if any.
     *
     * @param corners the points of the sheet to compare at
     * @param sigma standard deviation of the measurement there, in pixels
     */
    static Optional<Affine<SheetPoint, RasterPoint>> agreeing(
            List<Affine<SheetPoint, RasterPoint>> frames,
            Affine<SheetPoint, RasterPoint> measured,
            List<SheetPoint> corners,
            double sigma) {
        return frames.stream()
                .filter(f -> Lay.apart(f, measured, corners) < Math.max(BLIND, SIGMAS * sigma))
                .min(Comparator.comparingDouble(f -> Lay.apart(f, measured, corners)));
    }
}
