/**
 * From pixels to outlines: what of a raster belongs together, traced around and drawn with few straight lines. What the pixels
 * mean is not known here.
 */
package org.adumbrate.raster.trace;
