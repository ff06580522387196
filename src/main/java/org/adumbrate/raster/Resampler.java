package org.adumbrate.raster;

import java.io.IOException;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/**
 * Lays a raster onto a canvas under an affine placement, row by row, in linear light. Rows are numbered on the grid of the whole
 * sheet; only the columns of the canvas's window are made, and only what these need is read.
 *
 * <p>Enlarging is cubic (Catmull-Rom), reducing is area-true, both half-pixel exact. Where the raster ends its edge is
 * repeated and the canvas pixel's {@linkplain Cursor#coverage coverage} falls off, so that the frame has neither fringe
 * nor stairs. Values are not limited here: a cubic overshoots at steps.
 *
 * <p>A row depends on nothing but its number: any division of the canvas into strips gives the same values.
 */
public interface Resampler {
    /** Channels of the raster: 1 or 3. */
    int channels();

    /** The raster's rows, {@code [first, end)}, that a strip of the canvas is made from. */
    RowSpan sourceRows(int y, int rows);

    /** Promises that no strip above a canvas row will be asked for again. */
    void releaseAbove(int y);

    /** A new cursor, for use by one thread. */
    Cursor cursor();

    /**
     * Chooses the way for a placement.
     *
     * @param source the raster
     * @param placement from the raster's pixels to the sheet
     * @param canvas the canvas
     */
    static Resampler of(LightRows source, Affine<RasterPoint, SheetPoint> placement, Canvas canvas) {
        Affine<RasterPoint, RasterPoint> toPixels = placement.then(canvas.toPixels());
        if (!isUpright(toPixels)) {
            TurnedResampler turned = new TurnedResampler(source, toPixels, canvas.window());
            return source.inTurn() ? new SharedResampler(turned, canvas.window(), turned.tile()) : turned;
        }
        return source.inTurn()
                ? new SharedResampler(
                        new UprightResampler(new TrailingRows(source), toPixels, canvas), canvas.window(), 1)
                : new UprightResampler(source, toPixels, canvas);
    }

    /** True if rows of a raster lie along rows of the canvas. */
    static boolean isUpright(Affine<RasterPoint, RasterPoint> toPixels) {
        return toPixels.xy() == 0 && toPixels.yx() == 0;
    }

    /**
     * A span of rows.
     *
     * @param first the first row
     * @param end the row after the last
     */
    record RowSpan(int first, int end) {}

    /** Computes rows of one strip at a time. */
    interface Cursor {
        /** Turns to a strip of the canvas. This or {@link #row} waits for the raster's rows if need be. */
        void begin(int y, int rows) throws IOException;

        /**
         * Computes canvas row y of the strip, whose rows are asked for from its top: {@code width · channels} values, with
         * the window's width.
         */
        void row(int y, float[] light) throws IOException;

        /**
         * Computes the share of each pixel of canvas row y that the raster covers.
         *
         * @return false, leaving {@code share} as it is, when the raster covers every pixel wholly
         */
        boolean coverage(int y, float[] share);
    }
}
