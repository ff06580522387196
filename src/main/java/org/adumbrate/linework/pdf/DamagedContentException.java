package org.adumbrate.linework.pdf;

import java.io.IOException;

/** Data that are not whole: lines would be missing, and nobody could say how many. */
final class DamagedContentException extends IOException {
    private static final long serialVersionUID = 1L;

    DamagedContentException(String what) {
        super(what);
    }

    DamagedContentException(String what, Throwable cause) {
        super(what, cause);
    }
}
