package org.adumbrate.geometry;

/**
 * A point on the page of a vector file, before the page is fitted to the sheet.
 *
 * @param x millimetres right of the left edge of the page's visible box
 * @param y millimetres below the top edge of the page's visible box
 */
public record PagePoint(double x, double y) implements PlanePoint {}
