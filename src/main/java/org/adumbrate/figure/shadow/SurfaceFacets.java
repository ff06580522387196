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

    private final DepthMap depth;
    private final Affine<SheetPoint, RasterPoint> toPixels;
    private final double lowest;

    SurfaceFacets(DepthMap depth, View view) {
        this.depth = depth;
        this.toPixels = depth.toPixels();
        this.lowest = lowest(depth, view);
    }

    /** The least elevation that is seen: in each row that of its farthest pixel below the horizon, or nearest above. */
    private static double lowest(DepthMap depth, View view) {
        Affine<RasterPoint, SheetPoint> toSheet = depth.toPixels().inverse();
        int width = depth.size().width();
        double deepest = 0;
        for (int y = 0; y < depth.size().height(); y++) {
            double below = Math.max(toSheet.mapY(0, y + 0.5), toSheet.mapY(width, y + 0.5)) - view.horizonMm();
            double farthest = below > 0 ? 1 / leastInverse(depth, y) : 0;
            deepest = Math.max(deepest, below * farthest);
        }
        return view.eyeHeightM() - deepest / view.focalMm();
    }

    private static double leastInverse(DepthMap depth, int y) {
        float least = Float.POSITIVE_INFINITY;
        for (int x = 0; x < depth.size().width(); x++) {
            float inverse = depth.inverse(x, y);
            least = inverse > 0 ? Math.min(least, inverse) : least;
        }
        return least;
    }

    @Override
    public List<ModelPoint> reach(ShadowPart part) {
        return part.sweptTo(lowest - 0.01);
    }

    @Override
    public double leastDepth() {
        return depth.nearest() * 0.99;
    }

    @Override
    public Cursor cursor(double pixelWidth, double pixelHeight) {
        double across = Math.abs(toPixels.xx()) * pixelWidth + Math.abs(toPixels.xy()) * pixelHeight;
        double down = Math.abs(toPixels.yx()) * pixelWidth + Math.abs(toPixels.yy()) * pixelHeight;
        return new SurfaceCursor(Math.max(across, down) <= COARSE);
    }

    private final class SurfaceCursor implements Cursor {
        private final boolean fine;
        private final PlaneFit fit = new PlaneFit(depth);
        private int column = -1;
        private int row = -1;

        SurfaceCursor(boolean fine) {
            this.fine = fine;
        }

        @Override
        public boolean find(double x, double y, Facet facet) {
            double u = toPixels.mapX(x, y);
            double v = toPixels.mapY(x, y);
            int i = (int) Math.floor(u);
            int j = (int) Math.floor(v);
            if (i < 0 || j < 0 || i >= depth.size().width() || j >= depth.size().height() || depth.inverse(i, j) <= 0) {
                return false;
            }
            if (i != column || j != row) {
                column = i;
                row = j;
                fit.fit(i, j);
            }
            facet.inverse = Math.max(
                    fit.inverse() / 2, fit.inverse() + fit.across() * (u - i - 0.5) + fit.down() * (v - j - 0.5));
            facet.acrossSheet = fit.across() * toPixels.xx() + fit.down() * toPixels.yx();
            facet.downSheet = fit.across() * toPixels.xy() + fit.down() * toPixels.yy();
            facet.fillsPixel = fine;
            return true;
        }
    }
}
