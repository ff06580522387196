package org.adumbrate.figure;

import java.util.Collection;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * What is seen of a figure.
 *
 * @param area what is filled
 * @param outline the lines that are drawn around it: the figure's own, not those along which something hides it
 */
public record VisibleFigure(Region<SheetPoint> area, VectorPath<SheetPoint> outline) {
    private static final double TOLERANCE_MM = 0.005;

    /**
     * What is left of a figure.
     *
     * @param body what it covers
     * @param hiding what hides it: what stands before it, regions that were named, the cut
     */
    public static VisibleFigure of(Region<SheetPoint> body, Collection<Region<SheetPoint>> hiding) {
        Region<SheetPoint> area = body;
        VectorPath<SheetPoint> outline = body.outline();
        for (Region<SheetPoint> region : hiding) {
            if (!region.isEmpty() && !area.within(region).isEmpty()) {
                area = area.minus(region);
                outline = region.clipAway(outline, TOLERANCE_MM);
            }
        }
        return new VisibleFigure(area, outline);
    }

    /** True when nothing of it is seen. */
    public boolean isEmpty() {
        return area.isEmpty();
    }
}
