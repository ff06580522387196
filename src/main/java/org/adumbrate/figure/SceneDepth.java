package org.adumbrate.figure;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/** How far the scene is at every pixel of a depth pass. */
public interface SceneDepth {
    /** The size of the pass. */
    PixelSize size();

    /**
     * How far the first surface at the middle of a pixel lies along the viewing direction, in metres; infinite or not a number
     * where there is none.
     */
    double depthAt(int column, int row);

    /** Where the pass lies on the sheet. */
    Affine<RasterPoint, SheetPoint> toSheet();
}
