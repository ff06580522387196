package org.adumbrate.delivery;

import java.nio.file.Path;
import org.adumbrate.geometry.PixelSize;

/**
 * A file that was written.
 *
 * @param file where
 * @param kind what it is, in the sheet file's word, such as {@code underlay}
 * @param size its raster's size
 * @param dpi its raster's resolution
 * @param bytes its length
 */
public record Output(Path file, String kind, PixelSize size, double dpi, long bytes) {}
