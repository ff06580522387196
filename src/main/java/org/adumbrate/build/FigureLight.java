package org.adumbrate.build;

import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.LightRows;

/** The light that arrives past the figures of a sheet, at any resolution. */
interface FigureLight {
    /** On a raster that covers the sheet; 1 where no figure takes any. */
    LightRows on(PixelSize canvas);
}
