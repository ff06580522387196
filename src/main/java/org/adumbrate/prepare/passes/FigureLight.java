package org.adumbrate.prepare.passes;

import java.util.List;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.raster.LightRows;

/** The light that arrives past the figures of a sheet, at any resolution. */
public interface FigureLight {
    /** By what it is known. */
    List<Object> content();

    /** On the grid of a canvas, of which its window may be read; 1 where no figure takes any. */
    LightRows on(Canvas canvas);
}
