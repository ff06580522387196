/**
 * The few value types that every other room shares: points and the spaces they live in, affine maps between spaces,
 * lengths, sheets, frames and vector paths. Nothing here reads, writes, allocates rasters or depends on another package.
 *
 * <p>Three planes occur, each with a point type of its own, all with x to the right and y down: the {@link
 * org.adumbrate.geometry.SheetPoint sheet} in millimetres from its top-left corner, the {@link
 * org.adumbrate.geometry.PagePoint page} of a vector file in millimetres from the top-left corner of its visible box, and
 * a {@link org.adumbrate.geometry.RasterPoint raster} in continuous pixels, where (0, 0) is the outer corner of the first
 * pixel and pixel centres lie at +0.5.
 */
package org.adumbrate.geometry;
