package org.adumbrate.figure.shadow;

import java.util.List;
import org.adumbrate.figure.shadow.SunSilhouette.Effect;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/**
 * The light of single pixels; for use by one thread. A pixel that is wholly lit or wholly dark is known as such from its
 * middle and its extent; of the others the light is the mean over a few places in it: one where the penumbra is much wider
 * than the pixel, four, or sixteen where a shadow is sharper than the pixel.
 */
final class PixelShade {
    /** A pixel smaller than this share of the sun's cone has the light of its middle. */
    private static final double SMALL = 0.4;

    /** A pixel larger than this share of the sun's cone is looked at in sixteen places. */
    private static final double LARGE = 1.5;

    private final SunView view;
    private final FacetSource.Cursor cursor;
    private final double pixelWidth;
    private final double pixelHeight;
    private final Facet facet = new Facet();
    private final SunView.Place middle = new SunView.Place();
    private final SunView.Place beside = new SunView.Place();
    private final SolarDisc disc = new SolarDisc();
    private Caster[] casters = {};
    private Caster[] partly = {};
    private int partlyCount;

    PixelShade(FacetSource facets, SunView view, Affine<RasterPoint, SheetPoint> toSheet) {
        this.view = view;
        this.pixelWidth = toSheet.xx();
        this.pixelHeight = toSheet.yy();
        this.cursor = facets.cursor(pixelWidth, pixelHeight);
    }

    /** Turns to the figures that may cast on the pixels that follow. */
    void turnTo(List<Caster> over) {
        casters = over.toArray(Caster[]::new);
        partly = new Caster[casters.length];
    }

    /** The light of the pixel in a column and a row. */
    double light(int column, int row) {
        double x = pixelWidth * (column + 0.5);
        double y = pixelHeight * (row + 0.5);
        boolean seen = cursor.find(x, y, facet);
        if (!facet.fillsPixel) {
            return mean(x, y, 2);
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
        Effect effect = effect(roundAcross, roundUp);
        if (effect == Effect.NONE || !view.facesSun(x, y, facet)) {
            return 1;
        }
        if (effect == Effect.ALL) {
            return 0;
        }
        return mean(x, y, places(Math.max(roundAcross, roundUp)));
    }

    /** Sorts out which figures hide part of the sun from a neighbourhood of the pixel's middle. */
    private Effect effect(double roundAcross, double roundUp) {
        partlyCount = 0;
        for (Caster caster : casters) {
            SunView.Place foot = caster.foot();
            Effect effect = caster.silhouette()
                    .effect(
                            middle.across - foot.across,
                            middle.up - foot.up,
                            middle.toward - foot.toward,
                            roundAcross,
                            roundUp);
            if (effect == Effect.ALL) {
                return effect;
            }
            if (effect == Effect.SOME) {
                partly[partlyCount++] = caster;
            }
        }
        return partlyCount == 0 ? Effect.NONE : Effect.SOME;
    }

    /** How many places a side the pixel is looked at, by its extent against the narrowest cone. */
    private int places(double extent) {
        double narrowest = Double.POSITIVE_INFINITY;
        for (int k = 0; k < partlyCount; k++) {
            SunView.Place foot = partly[k].foot();
            double cone = partly[k].silhouette().coneRadius(middle.up - foot.up, middle.toward - foot.toward);
            narrowest = Math.min(narrowest, cone);
        }
        return extent < SMALL * narrowest ? 1 : extent < LARGE * narrowest ? 2 : 4;
    }

    private double mean(double x, double y, int places) {
        if (places == 2) {
            return four(x, y);
        }
        double sum = 0;
        for (int j = 0; j < places; j++) {
            for (int i = 0; i < places; i++) {
                double dx = ((i + 0.5) / places - 0.5) * pixelWidth;
                double dy = ((j + 0.5) / places - 0.5) * pixelHeight;
                sum += at(x + dx, y + dy);
            }
        }
        return sum / (places * places);
    }

    /** Four places, no two of them in one row or column: level and upright edges are told apart in quarters. */
    private double four(double x, double y) {
        double nearX = pixelWidth / 8;
        double farX = 3 * nearX;
        double nearY = pixelHeight / 8;
        double farY = 3 * nearY;
        return (at(x - nearX, y - farY) + at(x + farX, y - nearY) + at(x - farX, y + nearY) + at(x + nearX, y + farY))
                / 4;
    }

    private double at(double x, double y) {
        if (!cursor.find(x, y, facet)) {
            return 1;
        }
        view.find(x, y, facet.inverse, middle);
        Effect effect = effect(0, 0);
        if (effect == Effect.NONE || !view.facesSun(x, y, facet)) {
            return 1;
        }
        return effect == Effect.ALL ? 0 : shown();
    }

    private double shown() {
        disc.clear();
        for (int k = 0; k < partlyCount; k++) {
            SunView.Place foot = partly[k].foot();
            partly[k].silhouette()
                    .hide(middle.across - foot.across, middle.up - foot.up, middle.toward - foot.toward, disc);
        }
        return disc.shown();
    }
}
