package org.adumbrate.linework.profile;

import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.SheetPoint;

/**
 * How far away lines are. A line lies on the edge of something, so its depth is the least that is found around it.
 *
 * @param field how far away what the sheet shows is
 * @param reachMm how far around a line its depth is looked for, in mm of the sheet
 */
record LineDepth(DepthField field, double reachMm) {
    /** In mm: depth is looked up once every so often. */
    private static final double STEP_MM = 0.5;

    private static final int MOST_STEPS = 20_000;

    private static final double[][] PLACES = {
        {0, 0}, {1, 0}, {-1, 0}, {0, 1}, {0, -1}, {.5, .5}, {-.5, .5}, {.5, -.5}, {-.5, -.5}
    };

    /** In how many equal steps along a piece depth is looked up. */
    static int steps(PathPiece piece) {
        return (int) Math.max(1, Math.min(MOST_STEPS, Math.ceil(piece.reach() / STEP_MM)));
    }

    /** The depths at the middle of each step of a piece, in metres; not a number where none is known. */
    double[] along(PathPiece piece) {
        double[] depths = new double[steps(piece)];
        for (int k = 0; k < depths.length; k++) {
            double t = (k + 0.5) / depths.length;
            depths[k] = least(piece.xAt(t), piece.yAt(t));
        }
        return depths;
    }

    private double least(double x, double y) {
        double least = Double.NaN;
        for (double[] place : PLACES) {
            double found = field.depthAt(new SheetPoint(x + place[0] * reachMm, y + place[1] * reachMm));
            least = Double.isNaN(least) || found < least ? found : least;
        }
        return least;
    }
}
