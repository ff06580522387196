package org.adumbrate.linework.profile;

import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;

/** The weights along a run. */
final class WeightAlong {
    /** Medians over so many places to either side take out what a line only touches. */
    private static final int AROUND = 2;

    /** A weight stays until the depth is so far from its own, in steps of the scale: beyond half, so that it does not flicker. */
    private static final double HOLD = 0.65;

    private static final double[][] PLACES = {
        {0, 0}, {1, 0}, {-1, 0}, {0, 1}, {0, -1}, {.5, .5}, {-.5, .5}, {.5, -.5}, {-.5, -.5}
    };

    private final DepthField depth;
    private final Fade fade;

    WeightAlong(DepthField depth, Fade fade) {
        this.depth = depth;
        this.fade = fade;
    }

    /** The weight at each step of each piece in turn. */
    int[] of(List<Piece> run) {
        int count = run.stream().mapToInt(Piece::steps).sum();
        double[] scale = new double[count];
        int n = 0;
        for (Piece piece : run) {
            int steps = piece.steps();
            for (int k = 0; k < steps; k++) {
                double t = (k + 0.5) / steps;
                scale[n++] = fade.scale(least(piece.at(t, 0), piece.at(t, 1)));
            }
        }
        fillUnknown(scale);
        return held(medians(scale));
    }

    /** The least depth around a place, not a number if none is known. */
    private double least(double x, double y) {
        double least = Double.NaN;
        for (double[] place : PLACES) {
            double found = depth.depthAt(new SheetPoint(x + place[0] * fade.reachMm(), y + place[1] * fade.reachMm()));
            least = Double.isNaN(least) || found < least ? found : least;
        }
        return least;
    }

    private static void fillUnknown(double[] scale) {
        for (int n = 1; n < scale.length; n++) {
            scale[n] = Double.isNaN(scale[n]) ? scale[n - 1] : scale[n];
        }
        for (int n = scale.length - 2; n >= 0; n--) {
            scale[n] = Double.isNaN(scale[n]) ? scale[n + 1] : scale[n];
        }
        if (Double.isNaN(scale[0])) {
            Arrays.fill(scale, 0);
        }
    }

    private static double[] medians(double[] scale) {
        double[] medians = new double[scale.length];
        for (int n = 0; n < scale.length; n++) {
            double[] around =
                    Arrays.copyOfRange(scale, Math.max(0, n - AROUND), Math.min(scale.length, n + AROUND + 1));
            Arrays.sort(around);
            medians[n] = around[around.length / 2];
        }
        return medians;
    }

    private static int[] held(double[] scale) {
        int[] weights = new int[scale.length];
        int weight = (int) Math.round(scale[0]);
        for (int n = 0; n < scale.length; n++) {
            if (Math.abs(scale[n] - weight) > HOLD) {
                weight = (int) Math.round(scale[n]);
            }
            weights[n] = weight;
        }
        return weights;
    }
}
