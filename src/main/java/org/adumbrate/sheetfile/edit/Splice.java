package org.adumbrate.sheetfile.edit;

/**
 * A stretch of text and what comes in its place.
 *
 * @param from its first char
 * @param to behind its last
 * @param text the new one
 */
record Splice(int from, int to, String text) {
    static Splice in(int at, String text) {
        return new Splice(at, at, text);
    }

    static Splice out(int from, int to) {
        return new Splice(from, to, "");
    }
}
