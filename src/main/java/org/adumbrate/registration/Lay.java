package org.adumbrate.registration;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
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
}
