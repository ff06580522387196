package org.adumbrate.preflight;

/** Messages of a line say what was found, then a semicolon, then what to do. */
final class Clauses {
    private static final String BREAK = "; ";

    private Clauses() {}

    static String first(String message) {
        int at = message.lastIndexOf(BREAK);
        return at < 0 ? message : message.substring(0, at);
    }

    static String last(String message, String otherwise) {
        int at = message.lastIndexOf(BREAK);
        return at < 0 ? otherwise : message.substring(at + BREAK.length());
    }
}
