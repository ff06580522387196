package org.adumbrate.figure.shadow;

import java.util.List;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.View;

/** Every visible surface, pixel by pixel of a depth pass: in each the plane that it and its neighbours lie on. */
final class SurfaceFacets implements FacetSource {
    /** A canvas pixel larger than this many depth pixels may see several surfaces. */
    private static final double COARSE = 1.01;

    /** How far from a place the pixel may lie whose plane is seen there, in pixels. */
    private static final double NEIGHBOUR = 1.5;

    /** How far a plane may go on beyond the bounds of what its pixels see, as a share of the inverse of depth. */
    private static final double SLACK = 0.005;

    private final DepthMap depth;
    private final Affine<SheetPoint, RasterPoint> toPixels;
    private final DrawnEdges edges;
    private final DepthTiles tiles;
    private final double lowest;

    SurfaceFacets(Receiver.Surfaces surfaces, View view) {
        this.depth = surfaces.depth();
        this.toPixels = depth.toPixels();
        this.edges = DrawnEdges.of(surfaces.edges(), toPixels, depth.size());
        this.tiles = new DepthTiles(depth);
        this.lowest = lowest(depth, tiles, view);
    }

    /** No higher than the least elevation that is seen: each row of tiles at its farthest and lowest. */
    private static double lowest(DepthMap depth, DepthTiles tiles, View view) {
        Affine<RasterPoint, SheetPoint> toSheet = depth.toPixels().inverse();
        int width = depth.size().width();
        double deepest = 0;
        for (int row = 0; row < tiles.rows(); row++) {
            double end = (row + 1.0) * DepthTiles.TILE;
            double below = Math.max(toSheet.mapY(0, end), toSheet.mapY(width, end)) - view.horizonMm();
            deepest = below > 0 ? Math.max(deepest, below / tiles.leastInRow(row)) : deepest;
        }
        return view.eyeHeightM() - deepest / view.focalMm();
    }

    @Override
    public List<ModelPoint> reach(ShadowPart part) {
        return part.sweptTo(lowest);
    }

    @Override
    public double leastDepth() {
        return depth.nearest() * 0.99;
    }

    @Override
    public Cursor cursor(double pixelWidth, double pixelHeight) {
        double across = Math.abs(toPixels.xx()) * pixelWidth + Math.abs(toPixels.xy()) * pixelHeight;
        double down = Math.abs(toPixels.yx()) * pixelWidth + Math.abs(toPixels.yy()) * pixelHeight;
        return new SurfaceCursor(across, down);
    }

    /** The plane of the depth pixel that a place lies in or, where an edge is drawn between, of the nearest neighbour. */
    private final class SurfaceCursor implements Cursor {
        private static final int KEPT = 4;

        private final boolean fine;
        private final double reach;
        private final DrawnEdges.Near near = edges.new Near();
        private final PlaneFit[] fits = new PlaneFit[KEPT * KEPT];
        private int column = -1;
        private int row = -1;

        SurfaceCursor(double across, double down) {
            this.fine = Math.max(across, down) <= COARSE;
            this.reach = Math.hypot(across, down) / 2;
        }

        @Override
        public boolean find(double x, double y, Facet facet) {
            double u = toPixels.mapX(x, y);
            double v = toPixels.mapY(x, y);
            int i = (int) Math.floor(u);
            int j = (int) Math.floor(v);
            if (!depth.holds(i, j)) {
                facet.fillsPixel = fine;
                return false;
            }
            if (i != column || j != row) {
                column = i;
                row = j;
                near.turnTo(i, j);
            }
            if (near.part(u, v, i + 0.5, j + 0.5)) {
                return beside(u, v, i, j, facet);
            }
            return show(u, v, i, j, facet);
        }

        @Override
        public void bound(double left, double top, double right, double bottom, InverseBounds bounds) {
            double u = toPixels.mapX(left, top);
            double v = toPixels.mapY(left, top);
            double acrossU = toPixels.xx() * (right - left);
            double acrossV = toPixels.yx() * (right - left);
            double downU = toPixels.xy() * (bottom - top);
            double downV = toPixels.yy() * (bottom - top);
            bounds.clear();
            tiles.widen(
                    u + Math.min(0, acrossU) + Math.min(0, downU) - NEIGHBOUR,
                    v + Math.min(0, acrossV) + Math.min(0, downV) - NEIGHBOUR,
                    u + Math.max(0, acrossU) + Math.max(0, downU) + NEIGHBOUR,
                    v + Math.max(0, acrossV) + Math.max(0, downV) + NEIGHBOUR,
                    bounds);
            if (!bounds.isEmpty()) {
                bounds.hold(bounds.least() * (1 - SLACK), bounds.greatest() * (1 + SLACK));
            }
        }

        private boolean beside(double u, double v, int i, int j, Facet facet) {
            int bestI = i;
            int bestJ = j;
            double best = Double.POSITIVE_INFINITY;
            for (int q = Math.max(0, j - 1); q <= Math.min(depth.size().height() - 1, j + 1); q++) {
                for (int p = Math.max(0, i - 1); p <= Math.min(depth.size().width() - 1, i + 1); p++) {
                    double distance = Math.hypot(u - p - 0.5, v - q - 0.5);
                    if (distance < best && !near.part(u, v, p + 0.5, q + 0.5)) {
                        best = distance;
                        bestI = p;
                        bestJ = q;
                    }
                }
            }
            return show(u, v, bestI, bestJ, facet);
        }

        private boolean show(double u, double v, int i, int j, Facet facet) {
            facet.fillsPixel = fine && !near.touch(u, v, reach);
            if (depth.inverse(i, j) <= 0) {
                return false;
            }
            PlaneFit fit = fit(i, j);
            facet.inverse = Math.max(
                    fit.inverse() / 2, fit.inverse() + fit.across() * (u - i - 0.5) + fit.down() * (v - j - 0.5));
            facet.acrossSheet = fit.across() * toPixels.xx() + fit.down() * toPixels.yx();
            facet.downSheet = fit.across() * toPixels.xy() + fit.down() * toPixels.yy();
            return true;
        }

        private PlaneFit fit(int i, int j) {
            int at = i % KEPT + KEPT * (j % KEPT);
            if (fits[at] == null) {
                fits[at] = new PlaneFit(depth);
            }
            fits[at].turnTo(i, j);
            return fits[at];
        }
    }
}
