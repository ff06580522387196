package org.adumbrate.sheetfile;

/**
 * How finely a sheet is printed.
 *
 * @param dpi pixels per inch
 */
public record PrintResolution(double dpi) {}
