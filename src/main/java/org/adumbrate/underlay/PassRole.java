package org.adumbrate.underlay;

/** What a printed pass tells about the light. */
public enum PassRole {
    /** How much of the sun arrives past the building: a sun-shadow render. */
    SHADOW,
    /** How much of the sun arrives past the figures. */
    FIGURE_SHADOW,
    /** How much of the sky's light arrives: an occlusion render. */
    OCCLUSION
}
