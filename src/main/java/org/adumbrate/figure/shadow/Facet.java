package org.adumbrate.figure.shadow;

/**
 * The plane that is seen at a place of the sheet, by the inverse of its depth, which changes evenly over the sheet (the depth d
 * of a plane obeys {@code 1/d = a + b x + c y}). Filled anew for each place.
 */
final class Facet {
    /** 1 / depth at the place, in 1/m; above zero. */
    double inverse;

    /** Its change with x, a mm of the sheet. */
    double acrossSheet;

    /** Its change with y, a mm of the sheet. */
    double downSheet;

    /** Whether all of the pixel about the place is known to see this plane. */
    boolean fillsPixel;
}
