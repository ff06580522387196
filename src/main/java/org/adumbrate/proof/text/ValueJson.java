package org.adumbrate.proof.text;

import java.util.LinkedHashMap;
import java.util.Map;
import org.adumbrate.sheetfile.edit.SheetValue;
import org.adumbrate.sheetfile.form.Allowed;
import org.adumbrate.sheetfile.form.Range;

/** A value of a sheet file as the page hears of it. */
final class ValueJson {
    /** A range no wider than this is stepped through in hundredths: weights of lines, in mm. */
    private static final double NARROW = 10;

    private ValueJson() {}

    static Map<String, Object> of(SheetValue value, ShownText shown) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("key", value.key());
        value.span().ifPresent(span -> {
            json.put("from", shown.at(span.from()));
            json.put("to", shown.at(span.to()));
        });
        json.put("written", value.span().isPresent());
        json.put("value", value.value());
        json.put("meaning", value.meaning());
        allowed(value.allowed(), json);
        json.put("needed", value.isNeeded());
        json.put("shared", value.isShared());
        return json;
    }

    private static void allowed(Allowed allowed, Map<String, Object> json) {
        json.put("type", allowed.type());
        json.put("units", allowed.units());
        json.put("words", allowed.words());
        if (allowed.type().equals("number") || allowed.type().equals("integer")) {
            Range range = allowed.range();
            put(json, "min", range.min());
            put(json, "above", range.above());
            put(json, "max", range.max());
            json.put("step", step(allowed));
            if (!range.choices().isEmpty()) {
                json.put("choices", range.choices());
            }
        }
    }

    private static void put(Map<String, Object> json, String name, double limit) {
        if (Double.isFinite(limit)) {
            json.put(name, limit);
        }
    }

    /** What a press of an arrow key changes, in the first unit. */
    private static double step(Allowed allowed) {
        if (allowed.type().equals("integer")) {
            return 1;
        }
        String unit = allowed.units().isEmpty() ? "" : allowed.units().get(0);
        Range range = allowed.range();
        double least = Math.max(range.min(), range.above());
        return switch (unit) {
            case "%", "deg" -> 1;
            case "m" -> 0.05;
            case "mm" -> range.max() - least <= NARROW ? 0.01 : 1;
            default -> range.max() - least <= NARROW ? 0.1 : 1;
        };
    }
}
