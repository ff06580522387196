package org.adumbrate.build;

import org.adumbrate.geometry.Canvas;
import org.adumbrate.raster.LightRows;

/** The light that arrives past the figures of a sheet, at any resolution. */
interface FigureLight {
    /** On the grid of a canvas, of which its window may be read; 1 where no figure takes any. */
    LightRows on(Canvas canvas);
}
