package org.adumbrate.registration;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;

/** Makes maps from the sheet to the pixels of a pass. */
final class Lay {
    private Lay() {}

    /** The map that scales by (sx, sy) pixels a mm and takes the sheet point (x, y) to the pixel point (u, v). */
    static Affine<SheetPoint, RasterPoint> scaling(double sx, double sy, double x, double y, double u, double v) {
        return Affine.scalingThenShift(Space.SHEET, Space.RASTER, sx, sy, u - sx * x, v - sy * y);
    }

    /** The same map for an image reduced by a whole number. */
    static Affine<SheetPoint, RasterPoint> reduced(Affine<SheetPoint, RasterPoint> map, double times) {
        return map.then(Affine.scaling(Space.RASTER, Space.RASTER, 1 / times, 1 / times));
    }

    /** The map back; of an upright map without the negative zeros that a general inverse would have. */
    static Affine<RasterPoint, SheetPoint> back(Affine<SheetPoint, RasterPoint> map) {
        return map.isUpright()
                ? Affine.scalingThenShift(
                        Space.RASTER,
                        Space.SHEET,
                        1 / map.xx(),
                        1 / map.yy(),
                        0 - map.x0() / map.xx(),
                        0 - map.y0() / map.yy())
                : map.inverse();
    }

    /** The largest distance between the images of points under two maps, in pixels. */
    static double apart(Affine<SheetPoint, RasterPoint> a, Affine<SheetPoint, RasterPoint> b, List<SheetPoint> points) {
        double most = 0;
        for (SheetPoint p : points) {
            RasterPoint one = a.apply(p);
            RasterPoint other = b.apply(p);
            most = Math.max(most, Math.hypot(one.x() - other.x(), one.y() - other.y()));
        }
        return most;
    }

    /** The corners of the part of the sheet that a pass covers. */
    static List<SheetPoint> covered(SheetSize sheet, PixelSize pass, Affine<RasterPoint, SheetPoint> passToSheet) {
        List<SheetPoint> corners = new ArrayList<>();
        for (int k = 0; k < 4; k++) {
            SheetPoint p = passToSheet.at(k % 2 == 0 ? 0 : pass.width(), k < 2 ? 0 : pass.height());
            corners.add(new SheetPoint(clamp(p.x(), sheet.widthMm()), clamp(p.y(), sheet.heightMm())));
        }
        return corners;
    }

    private static double clamp(double value, double most) {
        return Math.max(0, Math.min(most, value));
    }
}
