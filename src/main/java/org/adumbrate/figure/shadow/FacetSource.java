package org.adumbrate.figure.shadow;

import java.util.List;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.perspective.View;

/** The planes that a {@link Receiver} shows, place by place; safe for use by several threads. */
interface FacetSource {
    /** Looks places up; for use by one thread. Cheapest from left to right along a row. */
    interface Cursor {
        /**
         * Finds what is seen at a place of the sheet, in mm.
         *
         * @return false where nothing is, and then of the facet only {@link Facet#fillsPixel} counts
         */
        boolean find(double x, double y, Facet facet);

        /** Bounds what may be found between two corners of the sheet, in mm. */
        void bound(double left, double top, double right, double bottom, InverseBounds bounds);
    }

    /** A cursor for pixels so large, in mm. */
    Cursor cursor(double pixelWidth, double pixelHeight);

    /**
     * The places that can lie in the shadow of a part of a figure: the corners of a convex body that holds them all.
     *
     * @param part what casts
     */
    List<ModelPoint> reach(ShadowPart part);

    /** The least depth at which a surface may be seen, in metres, above zero. */
    double leastDepth();

    /** What a receiver shows in a view. */
    static FacetSource of(Receiver receiver, View view) {
        if (receiver instanceof Receiver.Floor floor) {
            return new FloorFacets(floor, view);
        }
        return new SurfaceFacets((Receiver.Surfaces) receiver, view);
    }
}
