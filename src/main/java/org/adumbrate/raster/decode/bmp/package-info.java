/**
 * The BMP reader: heads of all versions, rows of pixels and run lengths. Other rooms see
 * {@link org.adumbrate.raster.decode.bmp.BmpReader} alone; no other format is known here.
 */
package org.adumbrate.raster.decode.bmp;
