package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.adumbrate.linework.page.LibraryWords;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;

/**
 * The tokens of a content stream (ISO 32000-1, 7.8.2). The library ends at the first that it cannot read; here that is passed
 * over and counted, and reading goes on behind it.
 */
final class PdfTokens {
    /** Objects that look like operators. */
    private static final Pattern WORD = Pattern.compile("(true|false|null)\\b");

    private final byte[] content;
    private final PdfSkips skips;
    private Tokens tokens;
    private int base;

    PdfTokens(byte[] content, PdfSkips skips) {
        this.content = content;
        this.skips = skips;
        this.tokens = new Tokens(content);
    }

    /** The next token; null behind the last. */
    Object next() throws IOException {
        while (true) {
            int at = base + tokens.position();
            String wrong;
            try {
                Object token = tokens.parseNextToken();
                if (token == null ? at >= content.length || isBlank(at) : isWhole(token, at)) {
                    return token;
                }
                wrong = "something is no number, name, string or instruction, or is not closed";
            } catch (IOException | RuntimeException e) {
                wrong = LibraryWords.of(e);
            }
            skips.add(wrong);
            skips.requireFew(0);
            goOnAt(endOfToken(at));
        }
    }

    /** Whether the library found the end of what it read: where that is missing, it takes the rest of the content for a part. */
    private boolean isWhole(Object token, int at) throws IOException {
        if (token instanceof COSArray) {
            return !swallowed(at, Math.min(content.length, base + tokens.position()));
        }
        if (token instanceof COSString) {
            return base + tokens.position() < content.length || ")>".indexOf(content[content.length - 1]) >= 0;
        }
        return !(token instanceof Operator operator && operator.getName().equals("ID"));
    }

    /** Whether an array holds operators, which are no objects (7.3.6). */
    private boolean swallowed(int from, int to) {
        int strings = 0;
        for (int k = from; k < to; k++) {
            char c = (char) (content[k] & 0xff);
            if (c == '\\') {
                k++;
            } else if (c == '(' || c == ')') {
                strings += c == '(' ? 1 : -1;
            } else if (c == '/' || c == '<') {
                while (strings == 0 && k + 1 < to && ">[]( \r\n\t".indexOf(content[k + 1]) < 0) {
                    k++;
                }
            } else if (strings == 0 && Character.isLetter(c)) {
                int end = Math.min(to, endOfToken(k));
                String word = new String(content, k, end - k, StandardCharsets.ISO_8859_1);
                if (!WORD.matcher(word).lookingAt()) {
                    return true;
                }
                k = end - 1;
            }
        }
        return false;
    }

    private void goOnAt(int place) throws IOException {
        tokens.close();
        base = place;
        tokens = new Tokens(Arrays.copyOfRange(content, place, content.length));
    }

    /** Behind the bytes up to the next blank, or behind the one that opens something that is not closed. */
    private int endOfToken(int from) {
        int at = from;
        while (at < content.length && isBlankAt(at)) {
            at++;
        }
        if (at < content.length && "[<({".indexOf(content[at]) >= 0) {
            return at + 1;
        }
        while (at < content.length && !isBlankAt(at)) {
            at++;
        }
        return at;
    }

    private boolean isBlankAt(int at) {
        return (content[at] & 0xff) <= ' ';
    }

    /** Whether nothing but blanks and remarks follows. */
    private boolean isBlank(int from) {
        boolean remark = false;
        for (int at = from; at < content.length; at++) {
            byte c = content[at];
            remark = remark ? c != '\n' && c != '\r' : c == '%';
            if (!remark && !isBlankAt(at)) {
                return false;
            }
        }
        return true;
    }

    private static final class Tokens extends PDFStreamParser {
        Tokens(byte[] content) {
            super(content);
        }

        int position() throws IOException {
            return source.isClosed() ? Integer.MAX_VALUE / 2 : (int) source.getPosition();
        }
    }
}
