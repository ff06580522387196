package org.adumbrate.linework.region;

/** What a line is to the region that is sought; where lines coincide the first of these holds. */
enum Kind {
    /** A line of the region itself. */
    OWN,
    /** A line of something else, which the region may run into. */
    OTHER,
    /** An edge of the sheet. */
    BORDER
}
