package org.adumbrate.report;

import java.nio.file.Path;
import org.adumbrate.geometry.PixelSize;

/**
 * A picture that the report takes in.
 *
 * @param png the file, which is read while the report is written
 * @param size its size
 */
public record Picture(Path png, PixelSize size) {}
