package org.adumbrate.preflight;

import org.adumbrate.build.SheetProof;

/** Looks at one thing. */
interface Rule {
    /** Tells what it finds. */
    void look(SheetProof proof, Observations found);
}
