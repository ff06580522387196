package org.adumbrate.linework.clip;

/** What counts as the inside of an outline that crosses itself (ISO 32000-1, 8.5.3.3). */
public enum FillRule {
    /** Wherever the outline winds around at least once, all told. */
    NON_ZERO,
    /** Wherever a ray to the outside meets the outline an odd number of times. */
    EVEN_ODD
}
