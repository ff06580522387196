package org.adumbrate.figure.shadow;

import java.util.List;
import org.adumbrate.figure.shadow.SunSilhouette.Effect;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/**
 * The light of single pixels; for use by one thread. A pixel that is wholly lit or wholly dark is known as such from its
 * middle and its extent; into the others one looks at a few places: one where the penumbra is much wider than the pixel, four,
 * or sixteen where a shadow is sharper than the pixel.
 */
final class PixelShade {
    /** A pixel smaller than this share of the sun's cone has the light of its middle. */
    private static final double SMALL = 0.4;

    /** A pixel larger than this share of the sun's cone is looked at in sixteen places. */
    private static final double LARGE = 1.5;

    /** Which strips each of sixteen places sees, so that no side of the pixel sees more of one side of the sun (Bayer, 1973). */
    private static final int[] SCATTERED = {0, 8, 2, 10, 12, 4, 14, 6, 3, 11, 1, 9, 15, 7, 13, 5};

    private final SunView view;
    private final FacetSource.Cursor cursor;
    private final double pixelWidth;
    private final double pixelHeight;
    private final Facet facet = new Facet();
    private final SunView.Place middle = new SunView.Place();
    private final SunView.Place beside = new SunView.Place();
    private final SolarDisc disc = new SolarDisc();
    private final InverseBounds bounds = new InverseBounds();
    private final PlaceBox box = new PlaceBox();
    private final Occluders occluders = new Occluders();
    private RowReach[] reaches = {};
    private int row;

    PixelShade(FacetSource facets, SunView view, Affine<RasterPoint, SheetPoint> toSheet) {
        this.view = view;
        this.pixelWidth = toSheet.xx();
        this.pixelHeight = toSheet.yy();
        this.cursor = facets.cursor(pixelWidth, pixelHeight);
    }

    /** Turns to a row and the figures that may cast on it. */
    void turnTo(int newRow, List<RowReach> nearRow) {
        row = newRow;
        reaches = nearRow.toArray(RowReach[]::new);
    }

    /** The first column of the row that a shadow may touch. */
    int first() {
        double first = Double.POSITIVE_INFINITY;
        for (RowReach reach : reaches) {
            first = Math.min(first, reach.from());
        }
        return (int) Math.max(0, Math.floor(first));
    }

    /** The column after the last that a shadow may touch. */
    int end() {
        double last = -1;
        for (RowReach reach : reaches) {
            last = Math.max(last, reach.to());
        }
        return (int) Math.min(Integer.MAX_VALUE, Math.floor(last) + 1);
    }

    /** Turns to a piece of the row; false if no shadow reaches it. */
    boolean turnTo(int column, int columns) {
        return occluders.take(reaches, column, column + columns) && boundPiece(column, columns) && occluders.keep(box);
    }

    /** Finds the box that holds all places seen in a piece; false if none are. */
    private boolean boundPiece(int column, int columns) {
        double left = pixelWidth * column;
        double top = pixelHeight * row;
        double right = left + pixelWidth * columns;
        double bottom = top + pixelHeight;
        cursor.bound(left, top, right, bottom, bounds);
        if (bounds.isEmpty()) {
            return false;
        }
        box.clear();
        for (int corner = 0; corner < 8; corner++) {
            double inverse = (corner & 4) == 0 ? bounds.least() : bounds.greatest();
            view.find((corner & 1) == 0 ? left : right, (corner & 2) == 0 ? top : bottom, inverse, middle);
            box.hold(middle);
        }
        return true;
    }

    /** The light of the pixel in a column of the row. */
    float light(int column) {
        double x = pixelWidth * (column + 0.5);
        double y = pixelHeight * (row + 0.5);
        boolean seen = cursor.find(x, y, facet);
        if (!facet.fillsPixel) {
            return (float) mean(x, y, 2);
        }
        if (!seen) {
            return 1;
        }
        view.find(x, y, facet.inverse, middle);
        double roundAcross = 0;
        double roundUp = 0;
        for (int half = 0; half < 2; half++) {
            double dx = half == 0 ? pixelWidth / 2 : 0;
            double dy = half == 0 ? 0 : pixelHeight / 2;
            double inverse = facet.inverse + dx * facet.acrossSheet + dy * facet.downSheet;
            view.find(x + dx, y + dy, Math.max(facet.inverse / 2, inverse), beside);
            roundAcross += Math.abs(beside.across - middle.across);
            roundUp += Math.abs(beside.up - middle.up);
        }
        Effect effect = occluders.effect(middle, roundAcross, roundUp);
        if (effect == Effect.NONE || !view.facesSun(x, y, facet)) {
            return 1;
        }
        if (effect == Effect.ALL) {
            return 0;
        }
        return (float) mean(x, y, places(Math.max(roundAcross, roundUp)));
    }

    /** How many places a side the pixel is looked at, by its extent against the narrowest cone. */
    private int places(double extent) {
        double cone = occluders.narrowestCone(middle);
        return extent < SMALL * cone ? 1 : extent < LARGE * cone ? 2 : 4;
    }

    /** Looks at so many places a side; each sees its own share of the sun's strips, which over the pixel are all. */
    private double mean(double x, double y, int places) {
        disc.clear();
        switch (places) {
            case 1 -> cast(x, y, 0, 1);
            case 2 -> castFour(x, y);
            default -> castSixteen(x, y);
        }
        return disc.shown();
    }

    /** Four places, no two of them in one row or column: level and upright edges are told apart in quarters. */
    private void castFour(double x, double y) {
        double nearX = pixelWidth / 8;
        double farX = 3 * nearX;
        double nearY = pixelHeight / 8;
        double farY = 3 * nearY;
        cast(x - nearX, y - farY, 0, 4);
        cast(x + farX, y - nearY, 1, 4);
        cast(x - farX, y + nearY, 2, 4);
        cast(x + nearX, y + farY, 3, 4);
    }

    private void castSixteen(double x, double y) {
        for (int k = 0; k < 16; k++) {
            int column = k % 4;
            int line = k / 4;
            cast(x + pixelWidth * (column - 1.5) / 4, y + pixelHeight * (line - 1.5) / 4, SCATTERED[k], 16);
        }
    }

    /** Hides what the figures hide from a place: of every so-manieth strip of the sun, from a first one on. */
    private void cast(double x, double y, int first, int step) {
        if (!cursor.find(x, y, facet)) {
            return;
        }
        view.find(x, y, facet.inverse, middle);
        Effect effect = occluders.effect(middle, 0, 0);
        if (effect == Effect.NONE || !view.facesSun(x, y, facet)) {
            return;
        }
        if (effect == Effect.ALL) {
            disc.hide(first, step);
        } else {
            occluders.hide(middle, disc, first, step);
        }
    }
}
