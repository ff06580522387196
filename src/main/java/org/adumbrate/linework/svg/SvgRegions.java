package org.adumbrate.linework.svg;

import java.util.List;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.clip.ClipShape;
import org.adumbrate.linework.clip.FillRule;

/** Shapes as regions, where they are joined and taken from each other. */
final class SvgRegions {
    /** Curves may be straightened by so many mm of the page. */
    private static final double TOLERANCE = 0.005;

    private SvgRegions() {}

    static Region<PagePoint> of(VectorPath<PagePoint> outline, FillRule rule) {
        return rule == FillRule.EVEN_ODD ? Region.evenOdd(outline, TOLERANCE) : Region.nonZero(outline, TOLERANCE);
    }

    static Region<PagePoint> union(List<ClipShape<PagePoint>> shapes) {
        return Region.union(
                Space.PAGE,
                shapes.stream().map(shape -> of(shape.outline(), shape.rule())).toList());
    }
}
