package org.adumbrate.sheetfile;

/** How a page is laid on a sheet of another size. */
public enum Fit {
    /** Scaled, where the two have the same ratio. */
    SCALE,
    /** Scaled until the whole page fits, with bare paper on two sides. */
    FIT,
    /** Scaled until the sheet is filled, with what then lies outside it cut off. */
    CROP
}
