package org.adumbrate.cli;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.adumbrate.fault.Shown;

/** Writes maps, lists, numbers, words and truth values as JSON (RFC 8259). */
final class Json {
    private Json() {}

    /** The text of a value; NaN and infinities, which JSON lacks, become null. */
    static String text(Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream()
                    .map(entry -> quoted(entry.getKey().toString()) + ": " + text(entry.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (value instanceof List<?> list) {
            return list.stream().map(Json::text).collect(Collectors.joining(", ", "[", "]"));
        }
        if (value instanceof Double number) {
            return Double.isFinite(number) ? Numbers.plain(number) : "null";
        }
        if (value == null || value instanceof Number || value instanceof Boolean) {
            return String.valueOf(value);
        }
        return quoted(value.toString());
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int k = 0; k < text.length(); k++) {
            char c = text.charAt(k);
            if (c == '"' || c == '\\') {
                quoted.append('\\').append(c);
            } else if (Shown.isUnfit(c)) {
                quoted.append(Shown.code(c));
            } else {
                quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }
}
