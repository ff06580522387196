/**
 * The reader of Radiance HDR pictures: their head and their scanlines of shared exponents. Other rooms see
 * {@link org.adumbrate.raster.decode.radiance.HdrReader} alone; no other format is known here.
 */
package org.adumbrate.raster.decode.radiance;
