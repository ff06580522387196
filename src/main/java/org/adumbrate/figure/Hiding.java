package org.adumbrate.figure;

import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.perspective.View;
import org.adumbrate.raster.trace.RegionTrace;
import org.adumbrate.raster.trace.Smoothing;
import org.adumbrate.raster.trace.TooManyCornersException;

/** Finds what stands before figures, in a depth pass. */
public final class Hiding {
    /** What lies nearer than the figure by no more than this may be touched by it: a rail, a seat, a table's edge. */
    private static final double TOUCHING_M = 0.15;

    /** What rises above the figure's floor by no more than this still is its floor. */
    private static final double FLOOR_M = 0.03;

    /** Grown by this, what hides keeps the line along its edge whole. */
    private static final double EDGE_MM = 0.1;

    /** Beyond the figure, so that the smoothing at the window's own edge does not show. */
    private static final int MARGIN_PX = 4;

    /** A figure behind a hedge, leaf by leaf, has some thousands of corners; noise has more. */
    private static final int MOST_CORNERS = 20_000;

    private final DepthMap scene;
    private final Affine<RasterPoint, SheetPoint> toSheet;
    private final View view;

    /**
     * @param scene the depth pass
     * @param view the view that it shows
     */
    public Hiding(DepthMap scene, View view) {
        this.scene = scene;
        this.toSheet = scene.toPixels().inverse();
        this.view = view;
    }

    /**
     * What hides a figure: the pixels around it at which the scene lies nearer than it, as polygons with smooth sides, grown by
     * {@value #EDGE_MM} mm. What the figure may touch does not hide it, nor does the floor it stands on.
     *
     * @param figure with its place in the model
     * @param body what it covers
     * @throws IllegalArgumentException if the figure's place in the model is not known
     * @throws TooManyCornersException if the depth pass is noise
     */
    public Region<SheetPoint> before(PlacedFigure figure, Region<SheetPoint> body) {
        Region<SheetPoint> nothing = Region.empty(Space.SHEET);
        return body.extent().map(extent -> before(figure, window(extent))).orElse(nothing);
    }

    private Region<SheetPoint> before(PlacedFigure figure, Window window) {
        if (window.isEmpty()) {
            return Region.empty(Space.SHEET);
        }
        FigureDepth depth = new FigureDepth(figure, view);
        Region<RasterPoint> nearer = RegionTrace.trace(
                (column, row) -> {
                    int x = window.left + column;
                    int y = window.top + row;
                    return depth.isHiddenBy(toSheet.at(x + 0.5, y + 0.5), 1 / (double) scene.inverse(x, y));
                },
                new PixelSize(window.right - window.left, window.bottom - window.top),
                Smoothing.USUAL,
                MOST_CORNERS);
        if (nearer.isEmpty()) {
            return Region.empty(Space.SHEET);
        }
        Affine<RasterPoint, RasterPoint> shift =
                Affine.scalingThenShift(Space.RASTER, Space.RASTER, 1, 1, window.left, window.top);
        return nearer.transform(shift.then(toSheet)).grown(EDGE_MM);
    }

    private Window window(Extent extent) {
        Extent pixels = Region.rectangle(Space.SHEET, extent.left(), extent.top(), extent.right(), extent.bottom())
                .transform(scene.toPixels())
                .extent()
                .orElseThrow();
        return new Window(
                Math.max(0, (int) Math.floor(pixels.left()) - MARGIN_PX),
                Math.max(0, (int) Math.floor(pixels.top()) - MARGIN_PX),
                Math.min(scene.size().width(), (int) Math.ceil(pixels.right()) + MARGIN_PX),
                Math.min(scene.size().height(), (int) Math.ceil(pixels.bottom()) + MARGIN_PX));
    }

    /** Pixels from left and top on, up to but without right and bottom. */
    private record Window(int left, int top, int right, int bottom) {
        boolean isEmpty() {
            return right <= left || bottom <= top;
        }
    }

    /** How far a figure is: in its plane, which is taken to turn no more than a little away from the picture's depth. */
    private static final class FigureDepth {
        /** Seen more sharply than this from the side, places across the figure say little about their depth. */
        private static final double LEAST_COS = 0.3;

        private final View view;
        private final Spot spot;
        private final double floor;
        private final double depth;
        private final double slope;
        private final double reach;

        FigureDepth(PlacedFigure figure, View view) {
            this.view = view;
            this.spot = figure.spot();
            ModelPoint foot = spot.model()
                    .orElseThrow(() -> new IllegalArgumentException("the figure's place in the model is not known"));
            this.floor = foot.z();
            this.depth = view.depth(foot);
            double turn = figure.stance().turn() + view.turn();
            double cos = Math.cos(turn);
            this.slope = Math.sin(turn) / Math.copySign(Math.max(LEAST_COS, Math.abs(cos)), cos);
            Extent extent = figure.outline().body().extent().orElseThrow();
            this.reach = Math.abs(Math.sin(turn))
                    * figure.metresPerUnit()
                    * Math.max(Math.abs(extent.left()), Math.abs(extent.right()));
        }

        boolean isHiddenBy(SheetPoint seen, double sceneDepth) {
            double aside = (seen.x() - spot.foot().x()) / spot.mmPerMetre() * slope;
            double here = depth + Math.max(-reach, Math.min(reach, aside));
            return sceneDepth < here - TOUCHING_M && !isFloor(seen, sceneDepth);
        }

        /** Seen from above, nothing that is no higher than a floor hides what stands on it. */
        private boolean isFloor(SheetPoint seen, double sceneDepth) {
            return view.eyeHeightM() > floor && view.at(seen, sceneDepth).z() <= floor + FLOOR_M;
        }
    }
}
