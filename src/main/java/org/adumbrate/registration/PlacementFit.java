package org.adumbrate.registration;

import java.util.Arrays;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;

/**
 * The map that brings lines onto the edges found across them, by least squares that outliers cannot pull: Tukey's biweight with
 * the scale taken anew from the median residual (Huber, Robust Statistics, 1981, chapter 7).
 */
final class PlacementFit {
    /** What the map may do. */
    enum Freedom {
        /** One scale, and a shift. */
        UNIFORM(3),
        /** A scale each way, and a shift. */
        STRETCH(4),
        /** Any affine map. */
        AFFINE(6);

        final int parameters;

        Freedom(int parameters) {
            this.parameters = parameters;
        }
    }

    /**
     * Residuals beyond so many standard deviations count for nothing. The usual 4.7 is 95 % efficient for normal residuals;
     * these have a sharp peak and a long, lopsided tail (shadows and other edges beside the line, curved valleys),
     * and a narrow window follows the peak: it halves the error on occlusion passes.
     */
    private static final double TUKEY = 2;

    /** The window is never narrower than for this standard deviation, in pixels: edges without smoothing stray so far. */
    private static final double LEAST_SPREAD = 0.4;

    /** What the sandwich leaves out, because lines that run side by side err alike: found on passes with known truth. */
    private static final double ALIKE = 1.6;

    /** Edges are never trusted beyond this, in pixels: what the models do not know. */
    private static final double LEAST_SIGMA = 0.1;

    private static final int ROUNDS = 12;

    private final Freedom freedom;
    private final Probes probes;
    private final EdgeHits hits;
    private final double midX;
    private final double midY;

    /** The fitted map, from the sheet to pixels of the level. */
    private Affine<SheetPoint, RasterPoint> map;

    private double scale;
    private double[] weights;
    private double[][] covariance;

    private PlacementFit(Freedom freedom, Probes probes, EdgeHits hits, Affine<SheetPoint, RasterPoint> start) {
        this.freedom = freedom;
        this.probes = probes;
        this.hits = hits;
        double sumX = 0;
        double sumY = 0;
        for (int k = 0; k < hits.count; k++) {
            sumX += probes.x[hits.probe[k]];
            sumY += probes.y[hits.probe[k]];
        }
        midX = sumX / Math.max(1, hits.count);
        midY = sumY / Math.max(1, hits.count);
        map = freedom == Freedom.UNIFORM ? uniform(start) : start;
        weights = new double[hits.count];
    }

    /**
     * Fits a map to hits.
     *
     * @param start the placement at which they were found
     */
    static PlacementFit of(Freedom freedom, Probes probes, EdgeHits hits, Affine<SheetPoint, RasterPoint> start) {
        PlacementFit fit = new PlacementFit(freedom, probes, hits, start);
        if (hits.count >= 4 * freedom.parameters) {
            fit.run();
        }
        return fit;
    }

    Affine<SheetPoint, RasterPoint> map() {
        return map;
    }

    /** The nearest map with one scale that takes the middle of the hits to the same place. */
    private Affine<SheetPoint, RasterPoint> uniform(Affine<SheetPoint, RasterPoint> start) {
        double scale = start.meanScale();
        return Lay.scaling(scale, scale, midX, midY, start.mapX(midX, midY), start.mapY(midX, midY));
    }

    /** The robust standard deviation of the residuals, in pixels of the level. */
    double scale() {
        return scale;
    }

    /** The weight that hit k ended with, 0 (an outlier) to 1. */
    double weight(int k) {
        return weights[k];
    }

    private void run() {
        for (int round = 0; round < ROUNDS; round++) {
            double[] residuals = residuals();
            scale = spread(residuals);
            double[][] normal = new double[freedom.parameters][freedom.parameters + 1];
            double[] row = new double[freedom.parameters];
            for (int k = 0; k < hits.count; k++) {
                weights[k] = tukey(residuals[k] / Math.max(scale, LEAST_SPREAD));
                double weight = weights[k] / (sq(hits.sigma[k]) + sq(LEAST_SIGMA));
                design(k, row);
                for (int i = 0; i < row.length; i++) {
                    for (int j = 0; j < row.length; j++) {
                        normal[i][j] += weight * row[i] * row[j];
                    }
                    normal[i][row.length] += weight * row[i] * residuals[k];
                }
            }
            double[] step = SymmetricSystem.solve(normal);
            if (step == null) {
                return;
            }
            apply(step);
        }
        covariance = sandwich();
    }

    /** Distance along the normal from the line, as the map has it now, to the edge. */
    private double[] residuals() {
        double[] residuals = new double[hits.count];
        for (int k = 0; k < hits.count; k++) {
            residuals[k] = residual(k);
        }
        return residuals;
    }

    /** The same for hit k, in pixels of the level. */
    double residual(int k) {
        double x = probes.x[hits.probe[k]];
        double y = probes.y[hits.probe[k]];
        return hits.offset[k] + hits.nx[k] * (hits.u[k] - map.mapX(x, y)) + hits.ny[k] * (hits.v[k] - map.mapY(x, y));
    }

    private void design(int k, double[] row) {
        design(probes.x[hits.probe[k]] - midX, probes.y[hits.probe[k]] - midY, hits.nx[k], hits.ny[k], row);
    }

    /** How the point (x, y) moves along (nx, ny) with each parameter. */
    private void design(double x, double y, double nx, double ny, double[] row) {
        row[0] = nx;
        row[1] = ny;
        switch (freedom) {
            case UNIFORM -> row[2] = nx * x + ny * y;
            case STRETCH -> {
                row[2] = nx * x;
                row[3] = ny * y;
            }
            case AFFINE -> {
                row[2] = nx * x;
                row[3] = ny * y;
                row[4] = nx * y;
                row[5] = ny * x;
            }
        }
    }

    private void apply(double[] p) {
        double xx = map.xx() + p[2];
        double yy = map.yy() + (freedom == Freedom.UNIFORM ? p[2] : p[3]);
        double xy = map.xy() + (freedom == Freedom.AFFINE ? p[4] : 0);
        double yx = map.yx() + (freedom == Freedom.AFFINE ? p[5] : 0);
        double u = map.mapX(midX, midY) + p[0];
        double v = map.mapY(midX, midY) + p[1];
        map = new Affine<>(
                Space.SHEET, Space.RASTER, xx, xy, u - xx * midX - xy * midY, yx, yy, v - yx * midX - yy * midY);
    }

    /**
     * The covariance of the parameters with the residuals of one piece of line taken as one observation, because neighbouring
     * probes err alike (White, Econometrica 48, 817-838, 1980, with clusters).
     */
    private double[][] sandwich() {
        int n = freedom.parameters;
        double[] residuals = residuals();
        double[][] bread = new double[n][n];
        double[][] meat = new double[n][n];
        double[] cluster = new double[n];
        double[] row = new double[n];
        for (int k = 0; k < hits.count; k++) {
            double weight = weights[k] / (sq(hits.sigma[k]) + sq(LEAST_SIGMA));
            design(k, row);
            for (int i = 0; i < n; i++) {
                cluster[i] += weight * row[i] * residuals[k];
                for (int j = 0; j < n; j++) {
                    bread[i][j] += weight * row[i] * row[j];
                }
            }
            if (k + 1 == hits.count || probes.piece[hits.probe[k]] != probes.piece[hits.probe[k + 1]]) {
                for (int i = 0; i < n; i++) {
                    for (int j = 0; j < n; j++) {
                        meat[i][j] += cluster[i] * cluster[j];
                    }
                }
                Arrays.fill(cluster, 0);
            }
        }
        return SymmetricSystem.sandwich(bread, meat);
    }

    /** Standard deviation of where a sheet point lands, in pixels of the level; infinite if nothing was fitted. */
    double sigmaAt(double x, double y) {
        if (covariance == null) {
            return Double.POSITIVE_INFINITY;
        }
        double[] row = new double[freedom.parameters];
        design(x - midX, y - midY, 1, 0, row);
        double across = quadratic(row);
        design(x - midX, y - midY, 0, 1, row);
        return ALIKE * Math.sqrt(across + quadratic(row));
    }

    /** Root mean square, over the hits, of the standard deviation of where they land, in pixels of the level. */
    double sigma() {
        double sum = 0;
        for (int k = 0; k < hits.count; k += 16) {
            sum += sq(sigmaAt(probes.x[hits.probe[k]], probes.y[hits.probe[k]]));
        }
        return Math.sqrt(sum / Math.max(1, (hits.count + 15) / 16));
    }

    private double quadratic(double[] row) {
        double sum = 0;
        for (int i = 0; i < row.length; i++) {
            for (int j = 0; j < row.length; j++) {
                sum += row[i] * covariance[i][j] * row[j];
            }
        }
        return Math.max(0, sum);
    }

    /** 1.4826 times the median size: the standard deviation of normal residuals. */
    private static double spread(double[] residuals) {
        double[] sizes = new double[residuals.length];
        for (int k = 0; k < sizes.length; k++) {
            sizes[k] = Math.abs(residuals[k]);
        }
        Arrays.sort(sizes);
        return 1.4826 * sizes[sizes.length / 2];
    }

    private static double tukey(double z) {
        double share = z / TUKEY;
        return Math.abs(share) >= 1 ? 0 : sq(1 - sq(share));
    }

    private static double sq(double a) {
        return a * a;
    }
}
