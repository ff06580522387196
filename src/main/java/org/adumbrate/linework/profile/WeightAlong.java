package org.adumbrate.linework.profile;

import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.PathPiece;

/** The weights along a run. */
final class WeightAlong {
    /** Medians over so many places to either side take out what a line only touches. */
    private static final int AROUND = 2;

    /** A weight stays until the depth is so far from its own, in steps of the scale: beyond half, so that it does not flicker. */
    private static final double HOLD = 0.65;

    private final LineDepth depth;
    private final Fade fade;

    WeightAlong(DepthField depth, Fade fade) {
        this.depth = new LineDepth(depth, fade.reachMm());
        this.fade = fade;
    }

    /** The weight at each step of each piece in turn. */
    int[] of(List<PathPiece> run) {
        int count = run.stream().mapToInt(LineDepth::steps).sum();
        double[] scale = new double[count];
        int n = 0;
        for (PathPiece piece : run) {
            for (double depthM : depth.along(piece)) {
                scale[n++] = fade.scale(depthM);
            }
        }
        fillUnknown(scale);
        return held(medians(scale));
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
