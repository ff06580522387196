package org.adumbrate.fault;

import java.util.Locale;
import java.util.function.IntPredicate;

/**
 * Text that others wrote, such as names of files and layers, as it may be shown to a person: characters that command a terminal or
 * turn the direction of what follows (Unicode Standard Annex 9, 2), so that a name reads as another, are written out, such as
 * {@code \u005Cu202E}.
 */
public final class Shown {
    private Shown() {}

    /** In one line: ends of lines are written out too. */
    public static String line(String text) {
        return written(text, Shown::isUnfit);
    }

    /** In as many lines as it has. */
    public static String lines(String text) {
        return written(text, c -> c != '\n' && c != '\t' && isUnfit(c));
    }

    /** True for controls, ends of lines, and what turns the direction. */
    public static boolean isUnfit(int c) {
        return Character.isISOControl(c)
                || c == 0x061C // Arabic letter mark
                || c == 0x200E // left-to-right mark
                || c == 0x200F // right-to-left mark
                || (c >= 0x2028 && c <= 0x202E) // separators of lines and paragraphs; embeddings, overrides
                || (c >= 0x2066 && c <= 0x2069); // isolates
    }

    /** A character by its code, as Java, JSON and YAML write it. */
    public static String code(int c) {
        return String.format(Locale.ROOT, "\\u%04X", c);
    }

    private static String written(String text, IntPredicate unfit) {
        if (text.chars().noneMatch(unfit)) {
            return text;
        }
        StringBuilder shown = new StringBuilder(text.length() + 16);
        text.chars().forEach(c -> {
            if (unfit.test(c)) {
                shown.append(code(c));
            } else {
                shown.append((char) c);
            }
        });
        return shown.toString();
    }
}
