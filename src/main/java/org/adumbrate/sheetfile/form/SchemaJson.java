package org.adumbrate.sheetfile.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.adumbrate.sheetfile.complaint.Wording;

/** Writes JSON (RFC 8259) of maps, lists, texts, numbers and truth values. */
public final class SchemaJson {
    private SchemaJson() {}

    /** An object that keeps the order of its keys: {@code object("type", "string", "minLength", 1)}. */
    public static Map<String, Object> object(Object... keysAndValues) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int k = 0; k < keysAndValues.length; k += 2) {
            object.put((String) keysAndValues[k], keysAndValues[k + 1]);
        }
        return object;
    }

    /** Indented by two; lists of plain values on one line. */
    public static String text(Object value) {
        return text(value, "\n");
    }

    private static String text(Object value, String newLine) {
        String inner = newLine + "  ";
        if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream()
                    .map(entry -> text(entry.getKey(), inner) + ": " + text(entry.getValue(), inner))
                    .collect(Collectors.joining("," + inner, "{" + inner, newLine + "}"));
        }
        if (value instanceof List<?> list) {
            boolean isPlain = list.stream().noneMatch(item -> item instanceof Map || item instanceof List);
            List<String> items = list.stream().map(item -> text(item, inner)).toList();
            return isPlain
                    ? "[" + String.join(", ", items) + "]"
                    : "[" + inner + String.join("," + inner, items) + newLine + "]";
        }
        if (value instanceof Number number) {
            return Wording.number(number.doubleValue());
        }
        return value instanceof Boolean ? value.toString() : quoted(value.toString());
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.chars().forEach(c -> {
            if (c < ' ') {
                quoted.append("\\u%04x".formatted(c));
            } else {
                quoted.append(c == '"' || c == '\\' ? "\\" : "").append((char) c);
            }
        });
        return quoted.append('"').toString();
    }
}
