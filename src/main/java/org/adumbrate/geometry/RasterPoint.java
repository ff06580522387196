package org.adumbrate.geometry;

/**
 * A point in a raster, in continuous pixels: the first pixel covers 0 to 1 in x and y, its centre is (0.5, 0.5).
 *
 * @param x pixels right of the raster's left edge
 * @param y pixels below the raster's top edge
 */
public record RasterPoint(double x, double y) implements PlanePoint {}
