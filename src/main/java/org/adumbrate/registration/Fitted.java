package org.adumbrate.registration;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/**
 * A placement that has been fitted to edges.
 *
 * @param map from the sheet to pixels of the pass
 * @param model the edges it was fitted to
 * @param level where they were measured
 * @param hits the edges, measured from the fit's last start
 * @param fit the fit, in pixels of the level
 */
record Fitted(
        Affine<SheetPoint, RasterPoint> map, EdgeModel model, PassLevel level, EdgeHits hits, PlacementFit fit) {
    /** The number of edges that the fit agrees with, outliers left out. */
    double support() {
        double sum = 0;
        for (int k = 0; k < hits.count; k++) {
            sum += Math.abs(fit.residual(k)) < 0.5 ? 1 : 0;
        }
        return sum;
    }

    /** Standard deviation of where a sheet point lands, in pixels of the pass. */
    double sigmaAt(double x, double y) {
        return fit.sigmaAt(x, y) * level.image().reduction;
    }
}
