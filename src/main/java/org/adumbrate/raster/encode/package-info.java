/**
 * Linear light turned into files: quantised with or without dither, compressed strip by strip on every core, written as
 * TIFF, PNG or the image stream of a PDF. Only finished strips are held, so the size of a picture does not matter.
 */
package org.adumbrate.raster.encode;
