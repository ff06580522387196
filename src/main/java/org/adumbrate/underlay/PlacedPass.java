package org.adumbrate.underlay;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.raster.LightRows;

/**
 * A printed pass, where it lies and how it is to look.
 *
 * @param role what it tells about the light
 * @param rows its pixels
 * @param placement from its pixels to the sheet
 * @param look how it is to look
 */
public record PlacedPass(PassRole role, LightRows rows, Affine<RasterPoint, SheetPoint> placement, PassLook look) {}
