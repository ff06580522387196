package org.adumbrate.registration;

import java.util.OptionalDouble;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/**
 * The edges that a pass shows by itself, whatever the lines: pixels at which its tone changes most, across the change
 * (non-maximum suppression after Canny, IEEE Trans. Pattern Analysis and Machine Intelligence 8, 679-698, 1986).
 */
final class PassEdges {
    /** An edge changes the tone by this a pixel... */
    private static final double LEAST_SLOPE = 0.02;

    /** ...and by so many times the noise. */
    private static final double OVER_NOISE = 3;

    /** An edge this near a line, in pixels... */
    private static final double NEAR = 1.2;

    /** ...and along it to within this angle is the line's. */
    private static final double ALONG = Math.cos(Math.toRadians(15));

    private static final int COLUMNS = 8;
    private static final int ROWS = 6;
    private static final int REGIONS = COLUMNS * ROWS;
    private static final int EDGES_OF_A_REGION = 40;

    /** Fewer edges say nothing. */
    private static final int ENOUGH_EDGES = 400;

    private final PassLevel level;

    PassEdges(PassLevel level) {
        this.level = level;
    }

    /**
     * How many of the edges lie along lines, counted by region of the pass, row by row: first those that are rather upright, then
     * those rather level.
     */
    static final class Explained {
        private final int[] edges = new int[2 * REGIONS];
        private final int[] along = new int[2 * REGIONS];

        private void count(int region, boolean explained) {
            edges[region]++;
            along[region] += explained ? 1 : 0;
        }

        /**
         * The share of all edges that lie along lines, or of the upright or the level ones, whichever is least: seen from farther left,
         * all that is level stays where it is. A direction of few edges does not count by itself; 0 if there are few edges at all.
         */
        double share() {
            double all = share(0, 2 * REGIONS).orElse(0);
            return Math.min(
                    all,
                    Math.min(
                            share(0, REGIONS).orElse(all),
                            share(REGIONS, 2 * REGIONS).orElse(all)));
        }

        private OptionalDouble share(int from, int to) {
            int all = 0;
            int found = 0;
            for (int k = from; k < to; k++) {
                all += edges[k];
                found += along[k];
            }
            return all < ENOUGH_EDGES ? OptionalDouble.empty() : OptionalDouble.of((double) found / all);
        }

        /** The share of the regions with enough edges in which at least some share of them lie along lines. */
        double regions(double least) {
            int regions = 0;
            int good = 0;
            for (int k = 0; k < REGIONS; k++) {
                int all = edges[k] + edges[k + REGIONS];
                if (all >= EDGES_OF_A_REGION) {
                    regions++;
                    good += along[k] + along[k + REGIONS] >= least * all ? 1 : 0;
                }
            }
            return regions == 0 ? 0 : (double) good / regions;
        }
    }

    /**
     * Counts the edges that lines account for.
     *
     * @param lines the lines
     * @param map from the sheet to pixels of the pass
     */
    Explained explained(LinePattern lines, Affine<SheetPoint, RasterPoint> map) {
        double[] pieces = onPass(lines.pieces(), Lay.reduced(map, level.image().reduction));
        PieceGrid grid = new PieceGrid(pieces, 4);
        PixelRect inside = level.inside();
        ToneImage image = level.image();
        double least = Math.max(LEAST_SLOPE, OVER_NOISE * level.noise());
        Explained explained = new Explained();
        Near near = new Near(pieces);
        for (int y = inside.top() + 3; y < inside.bottom() - 3; y++) {
            for (int x = inside.left() + 3; x < inside.right() - 3; x++) {
                double gx = slope(image, x, y, 1, 0);
                double gy = slope(image, x, y, 0, 1);
                double steep = Math.hypot(gx, gy);
                if (steep >= least && isSteepest(image, x, y, gx, gy, steep)) {
                    int region = y * ROWS / image.height * COLUMNS
                            + x * COLUMNS / image.width
                            + (Math.abs(gx) > Math.abs(gy) ? 0 : REGIONS);
                    near.at(x + 0.5, y + 0.5, gx / steep, gy / steep);
                    grid.near(x + 0.5 - NEAR, y + 0.5 - NEAR, x + 0.5 + NEAR, y + 0.5 + NEAR, near);
                    explained.count(region, near.found);
                }
            }
        }
        return explained;
    }

    /** Half the difference of the tone on either side, the mean of three rows (weights 1 2 1). */
    private static double slope(ToneImage image, int x, int y, int dx, int dy) {
        int w = image.width;
        int k = y * w + x;
        int on = dx + dy * w;
        int beside = dy + dx * w;
        float[] v = image.tone;
        return (2 * (v[k + on] - v[k - on])
                        + v[k + on + beside]
                        - v[k - on + beside]
                        + v[k + on - beside]
                        - v[k - on - beside])
                / 8;
    }

    private static boolean isSteepest(ToneImage image, int x, int y, double gx, double gy, double steep) {
        int dx = (int) Math.round(gx / steep);
        int dy = (int) Math.round(gy / steep);
        return steep >= steepness(image, x + dx, y + dy) && steep > steepness(image, x - dx, y - dy);
    }

    private static double steepness(ToneImage image, int x, int y) {
        return Math.hypot(slope(image, x, y, 1, 0), slope(image, x, y, 0, 1));
    }

    private static double[] onPass(double[] pieces, Affine<SheetPoint, RasterPoint> map) {
        double[] on = new double[pieces.length];
        for (int k = 0; k < pieces.length; k += 2) {
            on[k] = map.mapX(pieces[k], pieces[k + 1]);
            on[k + 1] = map.mapY(pieces[k], pieces[k + 1]);
        }
        return on;
    }

    /** Looks for a piece that runs along an edge. */
    private static final class Near implements PieceGrid.Visitor {
        private final double[] pieces;
        private double u;
        private double v;
        private double nx;
        private double ny;
        private boolean found;

        Near(double... pieces) {
            this.pieces = pieces;
        }

        void at(double pointU, double pointV, double normalX, double normalY) {
            u = pointU;
            v = pointV;
            nx = normalX;
            ny = normalY;
            found = false;
        }

        @Override
        public void visit(int s) {
            double dx = pieces[s + 2] - pieces[s];
            double dy = pieces[s + 3] - pieces[s + 1];
            double length = Math.hypot(dx, dy);
            if (found || length == 0 || Math.abs(dx * ny - dy * nx) < ALONG * length) {
                return;
            }
            double px = u - pieces[s];
            double py = v - pieces[s + 1];
            double along = (px * dx + py * dy) / length;
            found = along > -NEAR && along < length + NEAR && Math.abs(px * dy - py * dx) < NEAR * length;
        }
    }
}
