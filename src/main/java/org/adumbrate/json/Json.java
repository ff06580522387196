package org.adumbrate.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.fault.Shown;

/** Writes maps, lists, numbers, words and truth values as JSON (RFC 8259). */
public final class Json {
    private static final MathContext DIGITS = new MathContext(10);

    private Json() {}

    /**
     * The text of a value: of maps, lists, numbers, truth values and whatever else by its own text. Numbers have up to ten
     * significant digits; NaN and infinities, which JSON lacks, become null, and so does an optional that is empty.
     */
    public static String text(Object value) {
        StringBuilder text = new StringBuilder();
        write(value, text);
        return text.toString();
    }

    /**
     * An object, its keys in the order in which they are given.
     *
     * @param keysAndValues in turn
     */
    public static Map<String, Object> object(Object... keysAndValues) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int k = 0; k < keysAndValues.length; k += 2) {
            object.put((String) keysAndValues[k], keysAndValues[k + 1]);
        }
        return object;
    }

    private static void write(Object value, StringBuilder text) {
        if (value instanceof Map<?, ?> map) {
            String between = "{";
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                quote(entry.getKey().toString(), text.append(between));
                write(entry.getValue(), text.append(": "));
                between = ", ";
            }
            text.append(map.isEmpty() ? "{}" : "}");
        } else if (value instanceof Collection<?> list) {
            String between = "[";
            for (Object item : list) {
                write(item, text.append(between));
                between = ", ";
            }
            text.append(list.isEmpty() ? "[]" : "]");
        } else if (value instanceof Optional<?> optional) {
            write(optional.orElse(null), text);
        } else if (value instanceof Double number) {
            text.append(Double.isFinite(number) ? plain(number) : "null");
        } else if (value == null || value instanceof Number || value instanceof Boolean) {
            text.append(value);
        } else {
            quote(value.toString(), text);
        }
    }

    private static String plain(double number) {
        return new BigDecimal(number, DIGITS).stripTrailingZeros().toPlainString();
    }

    private static void quote(String words, StringBuilder text) {
        text.append('"');
        for (int k = 0; k < words.length(); k++) {
            char c = words.charAt(k);
            if (c == '"' || c == '\\') {
                text.append('\\').append(c);
            } else if (Shown.isUnfit(c)) {
                text.append(Shown.code(c));
            } else {
                text.append(c);
            }
        }
        text.append('"');
    }
}
