package org.adumbrate.linework.svg.css;

import java.util.Map;
import java.util.Optional;

/** Values that refer to custom properties (CSS Variables 1, 3). */
public final class CssVariables {
    private static final String BEGIN = "var(";

    /** Variables within variables, and what they come to; some lines of CSS could otherwise grow without end. */
    private static final int DEEPEST = 20;

    private static final int LONGEST = 10_000;

    private CssVariables() {}

    /** Whether a value refers to any. */
    public static boolean isUsedIn(String value) {
        return value.contains(BEGIN);
    }

    /**
     * Puts the values of custom properties in their place.
     *
     * @param custom the values by the properties' names
     * @return empty if one is not known and has no fallback, refers to itself, or if too much comes of it; then the whole
     *     declaration counts as not made (3.1)
     */
    public static Optional<String> replaced(String value, Map<String, String> custom) {
        return replaced(value, custom, 0);
    }

    private static Optional<String> replaced(String value, Map<String, String> custom, int depth) {
        StringBuilder text = new StringBuilder();
        int at = 0;
        for (int open = value.indexOf(BEGIN); open >= 0; open = value.indexOf(BEGIN, at)) {
            int from = open + BEGIN.length();
            int end = closing(value, from);
            if (end < 0 || depth > DEEPEST) {
                return Optional.empty();
            }
            Optional<String> put = variable(value.substring(from, end), custom, depth + 1);
            if (put.isEmpty() || text.length() + put.get().length() > LONGEST) {
                return Optional.empty();
            }
            text.append(value, at, open).append(put.get());
            at = end + 1;
        }
        return Optional.of(text.append(value.substring(at)).toString().strip());
    }

    private static Optional<String> variable(String inside, Map<String, String> custom, int depth) {
        int comma = inside.indexOf(',');
        String name = (comma < 0 ? inside : inside.substring(0, comma)).strip();
        String known = custom.get(name);
        Optional<String> value = known == null ? Optional.empty() : replaced(known, custom, depth);
        if (value.isPresent() || comma < 0) {
            return value;
        }
        return replaced(inside.substring(comma + 1).strip(), custom, depth);
    }

    private static int closing(String value, int from) {
        int depth = 1;
        for (int k = from; k < value.length(); k++) {
            depth += value.charAt(k) == '(' ? 1 : value.charAt(k) == ')' ? -1 : 0;
            if (depth == 0) {
                return k;
            }
        }
        return -1;
    }
}
