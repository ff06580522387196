package org.adumbrate.registration;

import java.util.Arrays;
import java.util.List;
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
record Fitted(Affine<SheetPoint, RasterPoint> map, EdgeModel model, PassLevel level, EdgeHits hits, PlacementFit fit) {
    /** The number of edges that the fit agrees with, outliers left out. */
    double support() {
        double sum = 0;
        for (int k = 0; k < hits.count; k++) {
            sum += Math.abs(fit.residual(k)) < Agreement.ON_LINE ? 1 : 0;
        }
        return sum;
    }

    /** The same less what chance would bring: a fifth of the edges found lie within half a pixel of anything. */
    double beyondChance() {
        return support() - 0.2 * hits.count;
    }

    /** The median distance across the lines between line and edge, outliers left out, in pixels of the level. */
    double residual() {
        double[] sizes = new double[hits.count];
        int used = 0;
        for (int k = 0; k < hits.count; k++) {
            if (fit.weight(k) > 0) {
                sizes[used++] = Math.abs(fit.residual(k));
            }
        }
        Arrays.sort(sizes, 0, used);
        return used == 0 ? Double.NaN : sizes[used / 2];
    }

    /** Standard deviation of where the edges' middle lands, in pixels of the pass. */
    double sigma() {
        return fit.sigma() * level.image().reduction;
    }

    /** The largest standard deviation of where one of some sheet points lands, in pixels of the pass. */
    double sigmaAt(List<SheetPoint> points) {
        double most = 0;
        for (SheetPoint p : points) {
            most = Math.max(most, fit.sigmaAt(p.x(), p.y()));
        }
        return most * level.image().reduction;
    }
}
