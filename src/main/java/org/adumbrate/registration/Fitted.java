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
    /** Edges that a line needs to be counted. */
    private static final int EDGES_OF_A_LINE = 3;

    /** Share of lines that agree by chance. */
    private static final double BY_CHANCE = 0.25;

    /** Lines that a fit of four parameters makes agree. */
    private static final int FITTED = 4;

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

    /**
     * How much more lines agree with the pass than chance would have it, in standard deviations: a line agrees if most of the edges
     * found along it lie on it; by chance one in four does, and the fit can always make a few agree.
     */
    double linesBeyondChance() {
        int lines = 0;
        int agreeing = 0;
        int start = 0;
        while (start < hits.count) {
            int end = start;
            int on = 0;
            while (end < hits.count && hits.piece(end) == hits.piece(start)) {
                on += Math.abs(fit.residual(end)) < Agreement.ON_LINE ? 1 : 0;
                end++;
            }
            if (end - start >= EDGES_OF_A_LINE) {
                lines++;
                agreeing += 2 * on > end - start ? 1 : 0;
            }
            start = end;
        }
        double spread = Math.sqrt(lines * BY_CHANCE * (1 - BY_CHANCE));
        return lines == 0 ? 0 : (agreeing - FITTED - lines * BY_CHANCE) / spread;
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
