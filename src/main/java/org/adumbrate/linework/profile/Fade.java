package org.adumbrate.linework.profile;

/**
 * How the weight of lines falls off with their distance: whole up to the near distance, then evenly down to a share of it at the
 * far one, in steps that the eye does not see.
 *
 * @param nearM up to this distance, in metres, lines have their whole width
 * @param farM from this distance on, in metres, they have the least; above the near one
 * @param least the least width as a share of the whole, above 0 and up to 1
 * @param reachMm how far around a line its depth is looked for, in mm of the sheet: about two pixels of the depth pass
 */
public record Fade(double nearM, double farM, double least, double reachMm) {
    /** The number of widths, from the whole to the least. */
    public static final int WEIGHTS = 8;

    /** @throws IllegalArgumentException if a number is out of its range */
    public Fade {
        if (!(nearM >= 0 && farM > nearM && least > 0 && least <= 1 && reachMm >= 0)) {
            throw new IllegalArgumentException(
                    "a fade needs 0 <= near < far, a share above 0 and up to 1, and a reach, not " + nearM + ", " + farM
                            + ", " + least + " and " + reachMm);
        }
    }

    /** How far a distance is down the scale of weights: 0 for the whole width, {@link #WEIGHTS} - 1 for the least. */
    double scale(double depthM) {
        double share = Math.max(0, Math.min(1, (depthM - nearM) / (farM - nearM)));
        return share * (WEIGHTS - 1);
    }

    /** The width at a step of the scale, as a share of the whole. */
    double share(int weight) {
        return 1 - (1 - least) * weight / (WEIGHTS - 1);
    }
}
