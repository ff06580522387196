package org.adumbrate.preflight;

/** Looks at one thing. */
interface Rule {
    /** Tells what it finds. */
    void look(CheckedSheet sheet, Observations found);
}
