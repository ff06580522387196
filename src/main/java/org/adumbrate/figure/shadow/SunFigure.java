package org.adumbrate.figure.shadow;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.ModelPoint;

/**
 * One figure in the sun, before any canvas.
 *
 * @param figure the figure
 * @param silhouette how it hides the sun
 * @param foot where it stands, in the sun's frame
 * @param bodies the corners of convex bodies in which its shadow lies
 */
record SunFigure(StandingSolid figure, SunSilhouette silhouette, SunView.Place foot, List<List<ModelPoint>> bodies) {
    static SunFigure of(StandingSolid figure, SunFrame sun, FacetSource facets) {
        SunSilhouette silhouette = SunSilhouette.of(figure, sun);
        List<List<ModelPoint>> bodies = new ArrayList<>();
        for (ShadowPart part : ShadowPart.of(silhouette, figure.foot(), sun)) {
            bodies.add(facets.reach(part));
        }
        return new SunFigure(figure, silhouette, SunView.of(figure.foot(), sun), bodies);
    }
}
