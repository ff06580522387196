package org.adumbrate.linework.profile;

import org.adumbrate.geometry.SheetPoint;

/** How far away what the sheet shows is. */
@FunctionalInterface
public interface DepthField {
    /**
     * The distance along the view axis, in metres, of the surface seen at a point: positive infinity where none is seen but
     * the background, not a number where nothing is known, such as off the pass.
     */
    double depthAt(SheetPoint point);
}
