package org.adumbrate.report.page;

import org.adumbrate.geometry.PixelSize;

/**
 * A file that the build wrote.
 *
 * @param name where, as seen from the sheet file
 * @param kind what it is, in the sheet file's word
 * @param size its raster's size
 * @param dpi its raster's resolution
 * @param bytes its length
 */
public record WrittenFile(String name, String kind, PixelSize size, double dpi, long bytes) {}
