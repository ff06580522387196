package org.adumbrate.raster.encode;

/** How the samples of a picture stand for light. */
public enum Transfer {
    /** By the sRGB curve, as pictures for people have it. */
    SRGB,
    /** In proportion, as measures have it. */
    LINEAR
}
