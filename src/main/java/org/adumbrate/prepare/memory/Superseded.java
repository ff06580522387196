package org.adumbrate.prepare.memory;

import java.io.InterruptedIOException;

/** Ends the work of a run whose result nobody waits for any more. */
public final class Superseded extends InterruptedIOException {
    private static final long serialVersionUID = 1L;

    Superseded() {
        super("a newer change has taken its place");
    }
}
