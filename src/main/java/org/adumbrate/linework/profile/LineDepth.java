package org.adumbrate.linework.profile;

import org.adumbrate.geometry.SheetPoint;

/**
 * How far away lines are. A line lies on the edge of something, so its depth is the least that is found around it.
 *
 * @param field how far away what the sheet shows is
 * @param reachMm how far around a line its depth is looked for, in mm of the sheet
 */
record LineDepth(DepthField field, double reachMm) {
    private static final double[][] PLACES = {
        {0, 0}, {1, 0}, {-1, 0}, {0, 1}, {0, -1}, {.5, .5}, {-.5, .5}, {.5, -.5}, {-.5, -.5}
    };

    /** The depths at the middle of each step of a piece, in metres; not a number where none is known. */
    double[] along(Piece piece) {
        double[] depths = new double[piece.steps()];
        for (int k = 0; k < depths.length; k++) {
            double t = (k + 0.5) / depths.length;
            depths[k] = least(piece.at(t, 0), piece.at(t, 1));
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
