package org.adumbrate.sheetfile;

/** How a page is laid on a sheet of another size. */
public enum Fit {
    /** Scaled, where the two have the same ratio. */
    SCALE,
    /** Scaled until the whole page fits, with bare paper on two sides. */
    FIT,
    /** At its own size, with what lies outside the sheet cut off. */
    CROP
}
