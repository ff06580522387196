package org.adumbrate.sheetfile.edit;

/**
 * The lines of a text, whatever ends them.
 *
 * @param text the text
 */
record Lines(String text) {
    /** The first char of the line that a char stands in. */
    int start(int at) {
        int start = at;
        while (start > 0 && !isBreak(start - 1)) {
            start--;
        }
        return start;
    }

    /** Behind the last char of the line, before what ends it. */
    int end(int at) {
        int end = at;
        while (end < text.length() && !isBreak(end)) {
            end++;
        }
        return end;
    }

    /** Where the next line begins; the end of the text where there is none. */
    int next(int at) {
        int end = end(at);
        return end + breakAt(end).length();
    }

    /** What ends the line, or the one before where this is the last of the text. */
    String ending(int at) {
        String own = breakAt(end(at));
        if (!own.isEmpty()) {
            return own;
        }
        int start = start(at);
        if (start == 0) {
            return "\n";
        }
        boolean isPair = start > 1 && text.charAt(start - 1) == '\n' && text.charAt(start - 2) == '\r';
        return text.substring(start - (isPair ? 2 : 1), start);
    }

    /** How many characters stand before a char in its line, as spaces. */
    String indent(int at) {
        int start = start(at);
        int count = text.codePointCount(start, at);
        boolean isMarked = start == 0 && text.startsWith("\uFEFF");
        return " ".repeat(count - (isMarked ? 1 : 0));
    }

    /** True where a stretch is empty, or holds space alone. */
    boolean isBlank(int from, int to) {
        return text.substring(from, to).isBlank();
    }

    /** True where nothing but space and a comment follows in the line. */
    boolean isDone(int at) {
        String rest = text.substring(at, end(at));
        return rest.isBlank() || (rest.stripLeading().startsWith("#") && Character.isWhitespace(rest.charAt(0)));
    }

    /** The first char from here that is neither space nor part of a comment; the end of the text where there is none. */
    int skip(int at) {
        int next = at;
        while (next < text.length()) {
            char c = text.charAt(next);
            if (c == '#') {
                next = end(next);
            } else if (Character.isWhitespace(c)) {
                next++;
            } else {
                return next;
            }
        }
        return next;
    }

    private String breakAt(int at) {
        if (at >= text.length()) {
            return "";
        }
        boolean isPair = text.charAt(at) == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n';
        return isPair ? "\r\n" : text.substring(at, at + 1);
    }

    private boolean isBreak(int at) {
        char c = text.charAt(at);
        return c == '\n' || c == '\r';
    }
}
