package org.adumbrate.sheetfile.complaint;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/** How names, numbers and choices are worded in keys and complaints. */
public final class Wording {
    private static final int LONGEST = 60;

    private Wording() {}

    /** {@code fieldOfView} and {@code AS_IS} as {@code field-of-view} and {@code as-is}. */
    public static String hyphened(String name) {
        return name.replaceAll("(?<=[a-z])(?=[A-Z])", "-").replace('_', '-').toLowerCase(Locale.ROOT);
    }

    /** As {@code a, b or c}. */
    public static String choice(List<String> words) {
        int last = words.size() - 1;
        return last < 1 ? String.join("", words) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    /** Such as {@code 1 item} or {@code 3 items}. */
    public static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }

    /** Without an exponent or needless zeros. */
    public static String number(double value) {
        return new BigDecimal(String.valueOf(value)).stripTrailingZeros().toPlainString();
    }

    /** Someone's text in quotes, on one line, cut short where it is long. */
    public static String quoted(String text) {
        return "'" + shortened(text) + "'";
    }

    /** Someone's text on one line, cut short where it is long. */
    public static String shortened(String text) {
        String line = text.strip().replaceAll("[\\p{Cntrl}\\p{Z}]+", " ");
        int end = line.offsetByCodePoints(0, Math.min(LONGEST, line.codePointCount(0, line.length())));
        return end < line.length() ? line.substring(0, end) + "…" : line;
    }
}
