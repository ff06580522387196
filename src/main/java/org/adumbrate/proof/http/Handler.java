package org.adumbrate.proof.http;

import java.io.IOException;

/** What answers at an address. */
public interface Handler {
    /**
     * Answers.
     *
     * @throws org.adumbrate.json.JsonFault if what was asked cannot be understood; it is answered 400 with its message
     */
    Answer answer(Ask ask) throws IOException;
}
