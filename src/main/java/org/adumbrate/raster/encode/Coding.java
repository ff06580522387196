package org.adumbrate.raster.encode;

/** How light becomes samples; the picture's colour profile says which it was. */
public enum Coding {
    /** By the curve of sRGB: what is looked at. */
    SRGB,
    /** In even steps of light, 16 bits a sample: what is measured or calculated with, such as a share of light. */
    LINEAR
}
