package org.adumbrate.sheetfile;

/** What becomes of a pass's own lit white. */
public enum White {
    /** It is measured, and printed as bare paper. */
    MEASURED,
    /** It is printed as it is. */
    AS_IS
}
