package org.adumbrate.raster;

import java.io.IOException;

/** Asked between pieces of long work whether its result is still wanted. */
public interface Halt {
    /** It always is. */
    Halt NEVER = () -> {};

    /**
     * Returns if the result is still wanted.
     *
     * @throws IOException if nobody waits for the result any more
     */
    void check() throws IOException;
}
