/**
 * The PNG reader: chunks, scanlines, filters, interlacing and palettes (ISO/IEC 15948), and what ancillary chunks say of colour and
 * resolution. Other rooms see {@link org.adumbrate.raster.decode.png.PngReader} alone; no other format is known here.
 */
package org.adumbrate.raster.decode.png;
