package org.adumbrate.linework.svg;

import java.util.Locale;
import java.util.Optional;

/**
 * A reference as values of properties have it, {@code url(...)} (CSS Values and Units Level 4, 4.5).
 *
 * @param address what it refers to, without quotes
 * @param rest what follows it
 */
record SvgReference(String address, String rest) {
    /** Reads one; empty if the value does not begin with one. */
    static Optional<SvgReference> parse(String value) {
        String text = value.strip();
        if (!text.toLowerCase(Locale.ROOT).startsWith("url(")) {
            return Optional.empty();
        }
        String inside = text.substring("url(".length()).stripLeading();
        char first = inside.isEmpty() ? 0 : inside.charAt(0);
        boolean quoted = first == '"' || first == '\'';
        int end = quoted ? inside.indexOf(first, 1) : inside.indexOf(')');
        int close = end < 0 ? -1 : inside.indexOf(')', end);
        if (close < 0) {
            return Optional.empty();
        }
        return Optional.of(new SvgReference(
                inside.substring(quoted ? 1 : 0, end).strip(),
                inside.substring(close + 1).strip()));
    }

    /** The id that an address names in its own file; empty if it leads into another. */
    static Optional<String> id(String address) {
        return address.startsWith("#") ? Optional.of(address.substring(1)) : Optional.empty();
    }

    /** Whether an address leads out of its file. */
    static boolean leadsOutside(String address) {
        return !address.isEmpty() && !address.startsWith("#") && !address.startsWith("data:");
    }
}
