package org.adumbrate.linework.svg;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * Finds the end of a document type declaration (XML 1.0, 2.8), as far as to see that there is one: where the file ends first,
 * the platform's parser tells so on standard error, at length.
 */
final class SvgDoctype {
    private static final int END = -1;

    private final InputStream in;
    private int last;

    private SvgDoctype(InputStream in) {
        this.in = in;
    }

    /** False if a file ends within its document type declaration. Its encoding does not matter: the marks are ASCII in all. */
    static boolean ends(InputStream file) throws IOException {
        SvgDoctype doctype = new SvgDoctype(new BufferedInputStream(file));
        return !doctype.begins() || doctype.endsAfterItsSubset();
    }

    /** Goes to behind the first mark that is neither a processing instruction nor a comment; true if a declaration begins. */
    private boolean begins() throws IOException {
        while (skipTo("<")) {
            int next = next();
            if (next == '?') {
                skipTo("?>");
            } else if (next != '!') {
                return false;
            } else if (next() != '-') {
                return last == 'D';
            } else {
                skipTo("-->");
            }
        }
        return false;
    }

    private boolean endsAfterItsSubset() throws IOException {
        boolean inSubset = false;
        int before = 0;
        for (int c = next(); c != END; c = next()) {
            boolean ended = true;
            if (c == '"' || c == '\'') {
                ended = skipTo(String.valueOf((char) c));
            } else if (before == '<' && c == '?') {
                ended = skipTo("?>");
            } else if (before == '!' && c == '-') {
                ended = skipTo("-->");
            }
            inSubset = (inSubset || c == '[') && c != ']';
            if (!ended || (c == '>' && !inSubset)) {
                return ended;
            }
            before = c;
        }
        return false;
    }

    /** Goes to behind a word; false if the file ends first. */
    private boolean skipTo(String word) throws IOException {
        StringBuilder latest = new StringBuilder();
        for (int c = next(); c != END; c = next()) {
            latest.append((char) c);
            if (latest.length() > word.length()) {
                latest.deleteCharAt(0);
            }
            if (word.contentEquals(latest)) {
                return true;
            }
        }
        return false;
    }

    /** The next byte that is not 0, as every other is in UTF-16. */
    private int next() throws IOException {
        do {
            last = in.read();
        } while (last == 0);
        return last;
    }
}
