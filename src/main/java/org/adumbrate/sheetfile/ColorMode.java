package org.adumbrate.sheetfile;

/** The samples of a delivered raster. */
public enum ColorMode {
    /** One sample. */
    GREY,
    /** Three samples. */
    COLOR,
    /** One where that holds everything, otherwise three. */
    AUTO
}
