package org.adumbrate.linework.profile;

/**
 * How a profile is found.
 *
 * @param gapMm gaps in the lines up to this are bridged to see what they enclose, in mm of the sheet
 * @param thinMm members thinner than this, such as rails and cables, keep their own pen alone, in mm of the sheet
 * @param reachMm how far beside a line depth is looked up, in mm of the sheet: about two pixels of the depth pass
 * @param jump what lies behind a profile must be so many times as far away as the building, above 1
 */
public record ProfileSettings(double gapMm, double thinMm, double reachMm, double jump) {
    /**
     * For exports whose corners miss each other by up to 0.3 mm, a profile of 0.5 mm, and a depth pass of some 150 pixels to the
     * inch.
     */
    public static final ProfileSettings STANDARD = new ProfileSettings(0.6, 0.8, 0.35, 1.08);

    /** @throws IllegalArgumentException if a length is not above zero, or the jump not above 1 */
    public ProfileSettings {
        if (!(gapMm > 0 && thinMm > 0 && reachMm > 0 && jump > 1)) {
            throw new IllegalArgumentException("a profile needs lengths above zero and a jump above 1, not " + gapMm
                    + ", " + thinMm + ", " + reachMm + " and " + jump);
        }
    }
}
