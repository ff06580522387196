package org.adumbrate.json;

import java.io.IOException;

/** A text that is no JSON, or not the JSON that was expected. */
public final class JsonFault extends IOException {
    private static final long serialVersionUID = 1L;

    /** @param message what was expected, and what was found */
    public JsonFault(String message) {
        super(message);
    }
}
