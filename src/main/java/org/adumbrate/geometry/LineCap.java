package org.adumbrate.geometry;

/** How a line ends (ISO 32000-1, 8.4.3.3, in its order). */
public enum LineCap {
    /** Square, at the end point. */
    BUTT,
    /** A half disc around the end point. */
    ROUND,
    /** Square, half a width beyond the end point. */
    PROJECTING
}
