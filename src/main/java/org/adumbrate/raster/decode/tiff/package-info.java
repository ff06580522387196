/**
 * The TIFF reader: strips and tiles, compressions, palettes, and samples of 1 to 64 bits (TIFF 6.0). What an Exif block has in
 * common with a TIFF lives in {@code metadata}, and the facsimile codes in {@code fax}.
 */
package org.adumbrate.raster.decode.tiff;
