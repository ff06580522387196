package org.adumbrate.figure.shadow;

import org.adumbrate.figure.shadow.SunSilhouette.Effect;

/** The figures that may hide the sun from a piece of a row, and from one neighbourhood in it; for use by one thread. */
final class Occluders {
    private Caster[] casters = {};
    private int count;
    private Caster[] partly = {};
    private int partlyCount;

    /** Takes the figures whose shadow may touch some columns of a row; false if there are none. */
    boolean take(RowReach[] reaches, int column, int end) {
        if (casters.length < reaches.length) {
            casters = new Caster[reaches.length];
            partly = new Caster[reaches.length];
        }
        count = 0;
        for (RowReach reach : reaches) {
            if (reach.touches(column, end)) {
                casters[count++] = reach.caster();
            }
        }
        return count > 0;
    }

    /** Lets go of those whose shadow does not reach a box; false if none is left. */
    boolean keep(PlaceBox box) {
        int kept = 0;
        for (int k = 0; k < count; k++) {
            if (box.effect(casters[k]) != Effect.NONE) {
                casters[kept++] = casters[k];
            }
        }
        count = kept;
        return kept > 0;
    }

    /** What they do together to a neighbourhood; those that hide a part of the sun are remembered. */
    Effect effect(SunView.Place middle, double roundAcross, double roundUp) {
        partlyCount = 0;
        for (int k = 0; k < count; k++) {
            Caster caster = casters[k];
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

    /** The narrowest of the sun's cones to those that hide a part of it. */
    double narrowestCone(SunView.Place middle) {
        double narrowest = Double.POSITIVE_INFINITY;
        for (int k = 0; k < partlyCount; k++) {
            SunView.Place foot = partly[k].foot();
            double cone = partly[k].silhouette().coneRadius(middle.up - foot.up, middle.toward - foot.toward);
            narrowest = Math.min(narrowest, cone);
        }
        return narrowest;
    }

    /** Hides what those that hide a part of the sun hide from a place, of every so-manieth strip from a first one on. */
    void hide(SunView.Place place, SolarDisc disc, int first, int step) {
        for (int k = 0; k < partlyCount; k++) {
            SunView.Place foot = partly[k].foot();
            partly[k]
                    .silhouette()
                    .hide(
                            place.across - foot.across,
                            place.up - foot.up,
                            place.toward - foot.toward,
                            disc,
                            first,
                            step);
        }
    }
}
