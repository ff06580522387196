package org.adumbrate.hostile;

/**
 * What became of reading one file.
 *
 * @param kind how it ended
 * @param words the fault's message, or what went wrong with the reading itself
 * @param millis processor time that it took
 */
record Outcome(Kind kind, String words, long millis) {
    /** The ways in which a reading may end; the first two are as they should be. */
    enum Kind {
        /** It was read whole. */
        READ,
        /** A fault of one line that names the file. */
        REFUSED,
        /** A fault of several lines, or one that does not name the file. */
        UNCLEAR,
        /** Anything thrown that is no fault, or light that is no number. */
        CRASHED,
        /** It took more memory than there is. */
        GREEDY,
        /** It did not end in time. */
        HUNG
    }

    /** Whether a person at the desk would be content with it. */
    boolean isGood() {
        return kind == Kind.READ || kind == Kind.REFUSED;
    }
}
