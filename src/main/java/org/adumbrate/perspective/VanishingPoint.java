package org.adumbrate.perspective;

import org.adumbrate.geometry.SheetPoint;

/**
 * A point of the sheet where straight lines of a drawing meet.
 *
 * @param at the point
 * @param yErrorMm the standard error of its y, in mm
 * @param worth how much better than chance it explains these lines, as a logarithm
 * @param lines how many meet there
 */
public record VanishingPoint(SheetPoint at, double yErrorMm, double worth, int lines) {}
