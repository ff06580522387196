package org.adumbrate.raster;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/**
 * How the rows of a raster pass by while strips of a canvas are computed from them: so that what is held of it is bounded,
 * whatever its size, the size of the canvas and the height of the strips.
 *
 * @param rows how many rows are read at a time at most, from the first not yet released; all of them if the raster is needed
 *     whole
 * @param inTurn true if that is too few for all strips that are computed at a time, so that the rows of the canvas must be
 *     made in turn
 */
public record RowPassage(int rows, boolean inTurn) {
    /** A window of decoded rows beyond this is worth a slower way, in bytes. */
    static final long MODERATE = 32L << 20;

    /** What the decoder may be ahead where rows are made in turn. */
    private static final int AHEAD = 48;

    private static final int MARGIN = 16;

    /**
     * Chooses the way. A window for all strips at a time lets every thread read for itself; where that would hold much, rows are
     * made in turn if that holds less; where even that would hold more than is allowed, or the raster runs up the canvas, it
     * is needed whole.
     *
     * @param raster the raster
     * @param placement from the raster's pixels to the sheet
     * @param canvas the canvas
     * @param stripRows rows of a strip
     * @param threads threads that compute strips
     * @param allowance bytes of samples that may be kept in memory
     */
    public static RowPassage of(
            RasterInfo raster,
            Affine<RasterPoint, SheetPoint> placement,
            Canvas canvas,
            int stripRows,
            int threads,
            long allowance) {
        Affine<RasterPoint, RasterPoint> toPixels = placement.then(canvas.toPixels());
        Affine<RasterPoint, RasterPoint> back = toPixels.inverse();
        int height = raster.size().height();
        RowPassage whole = new RowPassage(height, false);
        if (back.yy() <= 0) {
            return whole;
        }
        boolean upright = Resampler.isUpright(toPixels);
        int strips = OrderedStrips.window(threads);
        double forStrips = Math.min(height, reach(back, canvas, stripRows * (strips + 1.0)));
        double forTurn = Math.min(
                height, upright ? TrailingRows.WINDOW : reach(back, canvas, TurnedResampler.tile(back)) + AHEAD);
        double rowBytes = (double) raster.sampleBytes() / height;
        double made = (double) strips
                * stripRows
                * canvas.window().width()
                * raster.light().lightChannels()
                * Float.BYTES;
        boolean saves = forTurn * rowBytes + made < forStrips * rowBytes;
        RowPassage inStrips = new RowPassage((int) forStrips, false);
        RowPassage inTurn = new RowPassage((int) forTurn, forTurn < height);
        if (forStrips * rowBytes <= Math.min(MODERATE, allowance)) {
            return inStrips;
        }
        if (saves && forTurn * rowBytes + made <= allowance) {
            return inTurn;
        }
        return forStrips * rowBytes <= allowance ? inStrips : whole;
    }

    /** Rows of the raster that so many rows of the canvas reach, over its whole width. */
    private static double reach(Affine<RasterPoint, RasterPoint> back, Canvas canvas, double canvasRows) {
        double down = back.yy() * (canvasRows + 2);
        double across = Math.abs(back.yx()) * canvas.window().width();
        return Math.ceil(down + across + MARGIN);
    }
}
