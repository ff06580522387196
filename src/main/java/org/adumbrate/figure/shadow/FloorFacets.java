package org.adumbrate.figure.shadow;

import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.perspective.View;

/** A level floor: 1 / depth = (y - horizon) / (focal · height of the eye above the floor). */
final class FloorFacets implements FacetSource {
    /** What lies nearer than a hand before the eye is not on any sheet. */
    private static final double LEAST_DEPTH = 0.05;

    /** Nothing is seen beyond a thousand kilometres. */
    private static final double TINY = 1e-6;

    private final double elevation;
    private final double horizon;
    private final double slope;
    private final LevelRuns outline;

    FloorFacets(Receiver.Floor floor, View view) {
        this.elevation = floor.elevation();
        this.horizon = view.horizonMm();
        this.slope = 1 / (view.focalMm() * (view.eyeHeightM() - floor.elevation()));
        this.outline = floor.outline().map(LevelRuns::of).orElse(null);
    }

    @Override
    public List<ModelPoint> reach(ShadowPart part) {
        return part.on(elevation);
    }

    @Override
    public double leastDepth() {
        return LEAST_DEPTH;
    }

    @Override
    public Cursor cursor(double pixelWidth, double pixelHeight) {
        return outline == null ? new Open() : new Outlined(pixelWidth);
    }

    /** The plane as far as it is seen. */
    private class Open implements Cursor {
        @Override
        public boolean find(double x, double y, Facet facet) {
            double inverse = slope * (y - horizon);
            facet.fillsPixel = true;
            if (!(inverse > 0 && Double.isFinite(inverse))) {
                return false;
            }
            facet.inverse = inverse;
            facet.acrossSheet = 0;
            facet.downSheet = slope;
            return true;
        }

        @Override
        public void bound(double left, double top, double right, double bottom, InverseBounds bounds) {
            double a = slope * (top - horizon);
            double b = slope * (bottom - horizon);
            bounds.clear();
            if (a > 0 || b > 0) {
                bounds.hold(Math.max(TINY, Math.min(a, b)), Math.max(a, b));
            }
        }
    }

    /** Keeps where the outline crosses the last few levels asked for: those of one row of pixels. */
    private final class Outlined extends Open {
        private static final int KEPT = 8;

        private final double pixelWidth;
        private final double[] levels = new double[KEPT];
        private final double[][] ends = new double[KEPT][];
        private int next;

        Outlined(double pixelWidth) {
            this.pixelWidth = pixelWidth;
            Arrays.fill(levels, Double.NaN);
        }

        @Override
        public boolean find(double x, double y, Facet facet) {
            double[] runs = ends(y);
            int at = Arrays.binarySearch(runs, x);
            int before = at < 0 ? -at - 1 : at;
            boolean seen = before % 2 == 1 && super.find(x, y, facet);
            facet.fillsPixel = (before == 0 || x - runs[before - 1] > pixelWidth)
                    && (before == runs.length || runs[before] - x > pixelWidth);
            return seen;
        }

        private double[] ends(double y) {
            for (int k = 0; k < KEPT; k++) {
                if (levels[k] == y) {
                    return ends[k];
                }
            }
            next = (next + 1) % KEPT;
            levels[next] = y;
            ends[next] = outline.at(y);
            return ends[next];
        }
    }
}
