/**
 * Rasters in linear light: decoded from files in rows, resampled under any affine placement, cut in strips, encoded.
 * Encoded values (sRGB, ICC) and the image libraries stay inside the decoders and encoders of this room; what a pass is
 * for, and how passes are merged, is not known here.
 *
 * <p>Light, not ink: 0 is black and 1 is bare paper, 32-bit float, one channel (grey) or three (linear sRGB primaries).
 */
package org.adumbrate.raster;
