package org.adumbrate.registration;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;

/**
 * How well the edges of a pass agree with the lines at a placement, against what chance placements reach.
 *
 * @param edges edges found near lines
 * @param share share of them that lie on their line, to within half a pixel
 * @param lesser the same share among upright or among level lines, whichever is less: another picture may share the uprights of
 *     the right one, or its levels, but not both
 * @param chance the share when the pass is shifted by a few pixels this way and that
 * @param regions share of the regions of the pass with enough edges in which most of them lie on their lines; another
 *     camera can bring one plane of a model onto the lines, never all of them
 * @param lines how many standard deviations more lines agree than by chance
 * @param seen edges that lie on their line beyond what chance would put there, as a share of the places looked at
 * @param worst where in the pass an edge is farthest off its line, in the region that agrees least, in its pixels; null if
 *     no region has enough edges
 */
record Agreement(
        int edges,
        double share,
        double lesser,
        double chance,
        double regions,
        double lines,
        double seen,
        RasterPoint worst) {
    /** An edge this near, in pixels of the level, lies on its line. */
    static final double ON_LINE = 0.5;

    private static final int COLUMNS = 8;
    private static final int ROWS = 6;
    private static final int EDGES_OF_A_REGION = 12;
    private static final int EDGES_OF_A_DIRECTION = 40;
    private static final int CHANCES = 12;
    private static final int CHANCE_STRIDE = 3;

    /** Measures the agreement of a fitted placement. */
    static Agreement of(LinePattern lines, Fitted fitted) {
        int[] found = new int[COLUMNS * ROWS];
        int[] agreeing = new int[COLUMNS * ROWS];
        EdgeHits hits = fitted.hits();
        for (int k = 0; k < hits.count; k++) {
            int region = region(fitted, k);
            found[region]++;
            agreeing[region] += Math.abs(fitted.fit().residual(k)) < ON_LINE ? 1 : 0;
        }
        int regions = 0;
        int good = 0;
        int worst = -1;
        for (int k = 0; k < found.length; k++) {
            if (found[k] >= EDGES_OF_A_REGION) {
                regions++;
                good += 2 * agreeing[k] > found[k] ? 1 : 0;
                worst = worst < 0 || agreeing[k] * found[worst] < agreeing[worst] * found[k] ? k : worst;
            }
        }
        double share = fitted.support() / Math.max(1, hits.count);
        double lesser = Math.min(share, Math.min(share(fitted, true), share(fitted, false)));
        double chance = chance(lines, fitted);
        return new Agreement(
                hits.count,
                share,
                lesser,
                chance,
                regions == 0 ? 0 : (double) good / regions,
                fitted.linesBeyondChance(),
                (share - chance) * hits.count / Math.max(1, hits.looked),
                worst < 0 ? null : farthestOff(fitted, worst));
    }

    /** The share of edges on their lines among lines that are rather upright, or rather level; 1 if they are few. */
    private static double share(Fitted fitted, boolean upright) {
        EdgeHits hits = fitted.hits();
        int found = 0;
        int on = 0;
        for (int k = 0; k < hits.count; k++) {
            if (Math.abs(hits.nx[k]) > Math.abs(hits.ny[k]) == upright) {
                found++;
                on += Math.abs(fitted.fit().residual(k)) < ON_LINE ? 1 : 0;
            }
        }
        return found < EDGES_OF_A_DIRECTION ? 1 : (double) on / found;
    }

    private static int region(Fitted fitted, int k) {
        int column = (int) (fitted.hits().u[k] * COLUMNS / fitted.level().image().width);
        int row = (int) (fitted.hits().v[k] * ROWS / fitted.level().image().height);
        return Math.min(ROWS - 1, row) * COLUMNS + Math.min(COLUMNS - 1, column);
    }

    /** Of the edges in a region, where the one lies that is farthest off its line, in pixels of the pass. */
    private static RasterPoint farthestOff(Fitted fitted, int region) {
        int worst = -1;
        for (int k = 0; k < fitted.hits().count; k++) {
            boolean farther = worst < 0
                    || Math.abs(fitted.fit().residual(k))
                            > Math.abs(fitted.fit().residual(worst));
            worst = farther && region(fitted, k) == region ? k : worst;
        }
        int times = fitted.level().image().reduction;
        return new RasterPoint(fitted.hits().u[worst] * times, fitted.hits().v[worst] * times);
    }

    /** The share of edges on their lines when the pass is moved 5 to 38 pixels in directions spread by the golden angle. */
    private static double chance(LinePattern lines, Fitted fitted) {
        Affine<SheetPoint, RasterPoint> map =
                Lay.reduced(fitted.map(), fitted.level().image().reduction);
        double sum = 0;
        for (int n = 0; n < CHANCES; n++) {
            double angle = 2.4 * n;
            double far = 5 + 3 * n;
            EdgeHits hits = EdgeHits.find(
                    lines.probes(),
                    fitted.level(),
                    fitted.model(),
                    map.then(Affine.scalingThenShift(
                            Space.RASTER, Space.RASTER, 1, 1, far * Math.cos(angle), far * Math.sin(angle))),
                    CHANCE_STRIDE);
            int on = 0;
            for (int k = 0; k < hits.count; k++) {
                on += Math.abs(hits.offset[k]) < ON_LINE ? 1 : 0;
            }
            sum += hits.count == 0 ? 0 : (double) on / hits.count;
        }
        return sum / CHANCES;
    }

    /** The agreement beyond chance and its spread over the pass in one number: 0 by chance, 1 if all edges agree. */
    double score() {
        double beyond = Math.max(0, lesser - chance) / (1 - Math.min(0.9, chance));
        return (beyond + regions) / 2;
    }
}
