package org.adumbrate.linework.pdf;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * Goes over content (ISO 32000-1, 7.8.2) for no more than its operators that stroke and the forms that it names, many times
 * faster than it can be run.
 */
final class PdfScan {
    private static final Set<String> STROKING = Set.of("S", "s", "B", "B*", "b", "b*");
    private static final Set<String> PAINTING = Set.of("f", "F", "f*", "sh", "BI", "Tj", "TJ", "'", "\"");
    private static final int LONGEST_OPERATOR = 2;

    private final byte[] content;
    private final Map<String, Integer> drawn = new HashMap<>();
    private int strokes;
    private boolean painting;
    private boolean uncolored;

    private PdfScan(byte[] content) {
        this.content = content;
    }

    static PdfScan of(byte[] content) {
        PdfScan scan = new PdfScan(content);
        scan.run();
        return scan;
    }

    /** How many operators stroke. */
    int strokes() {
        return strokes;
    }

    /** Whether areas, pictures or texts are painted. */
    boolean isPainting() {
        return painting;
    }

    /** Whether the content is a glyph that takes its colour from the text (d1, ISO 32000-1, 9.6.5). */
    boolean isUncolored() {
        return uncolored;
    }

    /** How often each object is drawn, by its name among the resources. */
    Map<String, Integer> drawn() {
        return drawn;
    }

    private void run() {
        String name = "";
        int at = 0;
        while (at < content.length) {
            int end = endOfToken(at);
            char first = (char) (content[at] & 0xff);
            if (first == '/') {
                name = text(at + 1, end);
            } else if (end - at <= LONGEST_OPERATOR && Character.isLetter(first)) {
                count(text(at, end), name);
            }
            at = end;
        }
    }

    private void count(String operator, String name) {
        if (operator.equals("Do")) {
            drawn.merge(name, 1, Integer::sum);
        } else if (STROKING.contains(operator)) {
            strokes++;
        }
        painting |= PAINTING.contains(operator);
        uncolored |= operator.equals("d1");
    }

    private int endOfToken(int from) {
        char first = (char) (content[from] & 0xff);
        if (first == '(') {
            return endOfString(from);
        }
        int at = from + 1;
        if (first == '%') {
            while (at < content.length && content[at] != '\n' && content[at] != '\r') {
                at++;
            }
        } else if (isRegular(first) || first == '/') {
            while (at < content.length && isRegular((char) (content[at] & 0xff))) {
                at++;
            }
        }
        return at;
    }

    /** Behind the parenthesis that closes a string (ISO 32000-1, 7.3.4.2). */
    private int endOfString(int from) {
        int depth = 0;
        for (int at = from; at < content.length; at++) {
            if (content[at] == '\\') {
                at++;
            } else if (content[at] == '(') {
                depth++;
            } else if (content[at] == ')' && --depth == 0) {
                return at + 1;
            }
        }
        return content.length;
    }

    private static boolean isRegular(char c) {
        return c > ' ' && "()<>[]{}/%".indexOf(c) < 0;
    }

    private String text(int from, int to) {
        return new String(content, from, to - from, StandardCharsets.ISO_8859_1);
    }
}
