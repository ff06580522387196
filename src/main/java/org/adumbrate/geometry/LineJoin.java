package org.adumbrate.geometry;

/** How two pieces of a line meet (ISO 32000-1, 8.4.3.4, in its order). */
public enum LineJoin {
    /** Pointed. */
    MITER,
    /** A disc around the corner. */
    ROUND,
    /** Cut off. */
    BEVEL
}
