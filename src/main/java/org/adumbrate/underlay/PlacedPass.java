package org.adumbrate.underlay;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.raster.LightRows;
import org.adumbrate.raster.Resampler;

/**
 * A printed pass and where it lies. How it is to look is not said here.
 *
 * @param role what it tells about the light
 * @param rows its pixels
 * @param placement from its pixels to the sheet
 */
public record PlacedPass(PassRole role, LightRows rows, Affine<RasterPoint, SheetPoint> placement) {
    /** The pass laid onto a canvas, to be resampled as its rows are asked for. */
    public LaidPass on(Canvas canvas) {
        return new LaidPass(role, Resampler.of(rows, placement, canvas));
    }
}
