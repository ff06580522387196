package org.adumbrate.sheetfile;

import org.adumbrate.geometry.LineCap;

/** How the lines of a pen end. */
public enum PenCap {
    /** A half disc around the end point. */
    ROUND(LineCap.ROUND),
    /** Square, at the end point. */
    BUTT(LineCap.BUTT),
    /** Square, half a width beyond the end point. */
    SQUARE(LineCap.PROJECTING);

    private final LineCap line;

    PenCap(LineCap line) {
        this.line = line;
    }

    /** The same as vector formats have it. */
    public LineCap line() {
        return line;
    }
}
