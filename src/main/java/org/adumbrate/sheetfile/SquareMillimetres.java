package org.adumbrate.sheetfile;

/**
 * An area on the sheet.
 *
 * @param mm2 in square millimetres
 */
public record SquareMillimetres(double mm2) {}
