package org.adumbrate.registration;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Frame;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.registration.Placement.Status;

/** Places a pass without looking at it: by its ratio, or into a frame that was asked for. */
public final class FramePlacement {
    private FramePlacement() {}

    /** Fills the sheet with a pass of its ratio; a pass of another ratio is refused. */
    public static Placement byRatio(PixelSize pass, SheetSize sheet) {
        RatioCheck check = RatioCheck.of(pass, sheet);
        Explanation explains = check.fit() == RatioCheck.Fit.SAME
                ? Explanation.SAME_RATIO
                : check.fills() ? Explanation.ROUNDED : Explanation.REFUSED;
        Status status = check.fills() ? Status.ALIGNED : Status.REFUSED;
        return unseen(pass, status, explains, sheet.frame(), check.message());
    }

    /** Fills a frame on the sheet, whatever the ratio. */
    public static Placement pinned(PixelSize pass, Frame frame) {
        return unseen(pass, Status.ALIGNED, Explanation.SAME_RATIO, frame, "placed where the sheet file pins it");
    }

    private static Placement unseen(PixelSize pass, Status status, Explanation explains, Frame frame, String message) {
        Affine<RasterPoint, SheetPoint> map = frame.placing(pass);
        SheetPoint middle = new SheetPoint(frame.left() + frame.width() / 2, frame.top() + frame.height() / 2);
        return new Placement(
                pass, status, explains, map, Double.NaN, Double.NaN, Double.NaN, Double.NaN, middle, message);
    }
}
