/**
 * Embedded colour profiles (ICC.1:2022): what of them can be read exactly, and the rest by the platform, as a
 * {@link org.adumbrate.raster.decode.light.Colorimetry}. Where in a file a profile lies is not known here.
 */
package org.adumbrate.raster.decode.icc;
