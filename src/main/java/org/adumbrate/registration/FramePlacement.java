package org.adumbrate.registration;

import java.util.Locale;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Frame;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.registration.Placement.Status;

/** Places a pass without looking at it: by its ratio, or into a frame that was asked for. */
public final class FramePlacement {
    /** A pinned pass may be this far from where it was found, in pixels of the pass, and still be said to agree. */
    private static final double AGREED_PX = 1;

    private FramePlacement() {}

    /** Fills the sheet with a pass of its ratio; a pass of another ratio is refused. */
    public static Placement byRatio(PixelSize pass, SheetSize sheet) {
        RatioCheck check = RatioCheck.of(pass, sheet);
        Explanation explains = check.fit() == RatioCheck.Comparison.SAME
                ? Explanation.SAME_RATIO
                : check.fills() ? Explanation.ROUNDED : Explanation.REFUSED;
        Status status = check.fills() ? Status.ALIGNED : Status.REFUSED;
        return unseen(pass, status, explains, sheet.frame(), check.message());
    }

    /**
     * A placement that was pinned, and whether looking at the pass casts doubt on it.
     *
     * @param placement fills the frame, whatever was seen
     * @param doubtful whether the pass seems to lie elsewhere, or not to belong to the sheet at all
     */
    public record Pinned(Placement placement, boolean doubtful) {}

    /**
     * Fills a frame on the sheet, and says how that agrees with where the pass was found.
     *
     * @param frame where the pass is pinned
     * @param found where it was found by looking
     */
    public static Pinned pinned(Frame frame, Placement found) {
        PixelSize pass = found.pass();
        Affine<RasterPoint, SheetPoint> map = frame.placing(pass);
        double offMm = farthest(map, found.passToSheet(), pass);
        double offPx = offMm / map.meanScale();
        boolean doubtful = !found.aligned() || offPx > AGREED_PX;
        String message;
        if (!found.aligned()) {
            message = "placed where it is pinned, though " + found.message();
        } else if (doubtful) {
            message = String.format(
                    Locale.ROOT,
                    "placed where it is pinned, though its edges say that it lies up to %.2f mm (%.1f px) elsewhere",
                    offMm,
                    offPx);
        } else {
            message = String.format(
                    Locale.ROOT, "placed where it is pinned; its edges agree to %.2f mm (%.1f px)", offMm, offPx);
        }
        Placement placement = new Placement(
                pass,
                Status.ALIGNED,
                doubtful ? Explanation.MIXED : found.explains(),
                map,
                found.residualPx(),
                found.residualMm(),
                found.uncertaintyPx(),
                found.confidence(),
                found.worst(),
                message);
        return new Pinned(placement, doubtful);
    }

    /** The largest distance between where two maps bring the corners of a pass, in mm. */
    private static double farthest(
            Affine<RasterPoint, SheetPoint> a, Affine<RasterPoint, SheetPoint> b, PixelSize pass) {
        double most = 0;
        for (int corner = 0; corner < 4; corner++) {
            RasterPoint point =
                    new RasterPoint((corner & 1) * (double) pass.width(), (corner >> 1) * (double) pass.height());
            most = Math.max(most, a.apply(point).distanceTo(b.apply(point)));
        }
        return most;
    }

    /** Fills a frame on the sheet with a pass that cannot be looked at for want of lines. */
    public static Placement unseen(PixelSize pass, Frame frame) {
        return unseen(pass, Status.ALIGNED, Explanation.SAME_RATIO, frame, "placed where it is pinned");
    }

    private static Placement unseen(PixelSize pass, Status status, Explanation explains, Frame frame, String message) {
        Affine<RasterPoint, SheetPoint> map = frame.placing(pass);
        SheetPoint middle = new SheetPoint(frame.left() + frame.width() / 2, frame.top() + frame.height() / 2);
        return new Placement(
                pass, status, explains, map, Double.NaN, Double.NaN, Double.NaN, Double.NaN, middle, message);
    }
}
