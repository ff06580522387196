package org.adumbrate.figure.shadow;

/** A box in the {@link SunFrame} that holds places; filled anew for each part of a row. */
final class PlaceBox {
    private double leastAcross;
    private double mostAcross;
    private double leastUp;
    private double mostUp;
    private double leastToward;

    /** Holds nothing. */
    void clear() {
        leastAcross = leastUp = leastToward = Double.POSITIVE_INFINITY;
        mostAcross = mostUp = Double.NEGATIVE_INFINITY;
    }

    /** Widens the box to hold a place. */
    void hold(SunView.Place place) {
        leastAcross = Math.min(leastAcross, place.across);
        mostAcross = Math.max(mostAcross, place.across);
        leastUp = Math.min(leastUp, place.up);
        mostUp = Math.max(mostUp, place.up);
        leastToward = Math.min(leastToward, place.toward);
    }

    /** What a figure may do in it: the widest cone is that of the place farthest from the sun. */
    SunSilhouette.Effect effect(Caster caster) {
        SunView.Place foot = caster.foot();
        return caster.silhouette()
                .effect(
                        (leastAcross + mostAcross) / 2 - foot.across,
                        (leastUp + mostUp) / 2 - foot.up,
                        leastToward - foot.toward,
                        (mostAcross - leastAcross) / 2,
                        (mostUp - leastUp) / 2);
    }
}
