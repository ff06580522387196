package org.adumbrate.figure.shadow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.View;

/**
 * One figure that casts a shadow.
 *
 * @param silhouette how it hides the sun
 * @param foot where it stands, in the sun's frame
 * @param shapes where on the canvas its shadow may be seen
 * @param top the first row of them
 * @param bottom the row after the last
 */
record Caster(SunSilhouette silhouette, SunView.Place foot, List<ScreenShape> shapes, int top, int bottom) {
    static Caster of(
            StandingSolid figure,
            SunFrame sun,
            View view,
            FacetSource facets,
            Affine<SheetPoint, RasterPoint> toCanvas,
            PixelSize canvas) {
        SunSilhouette silhouette = SunSilhouette.of(figure, sun);
        List<ScreenShape> shapes = new ArrayList<>();
        int top = canvas.height();
        int bottom = 0;
        for (ShadowPart part : ShadowPart.of(silhouette, figure.foot(), sun)) {
            List<ModelPoint> body = facets.reach(part);
            for (ScreenShape shape : ScreenShape.of(body, view, facets.leastDepth(), toCanvas).stream()
                    .toList()) {
                shapes.add(shape);
                top = Math.min(top, shape.top());
                bottom = Math.max(bottom, shape.bottom());
            }
        }
        return new Caster(silhouette, SunView.of(figure.foot(), sun), shapes, top, bottom);
    }

    /** The columns that its shadow may touch in a row, if there are any. */
    Optional<RowReach> reach(int row) {
        if (row < top || row >= bottom) {
            return Optional.empty();
        }
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (ScreenShape shape : shapes) {
            from = Math.min(from, shape.leftIn(row));
            to = Math.max(to, shape.rightIn(row));
        }
        return from <= to ? Optional.of(new RowReach(this, from, to)) : Optional.empty();
    }
}
